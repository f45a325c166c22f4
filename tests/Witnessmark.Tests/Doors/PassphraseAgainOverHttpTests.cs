using System.Net;
using System.Net.Http.Json;
using Microsoft.Data.Sqlite;
using Witnessmark.Tests.Groups;
using Witnessmark.Tests.Serve;

namespace Witnessmark.Tests.Doors;

// Source: own derivation; what a tablet that a lead laid down must not be enough for.
public sealed class PassphraseAgainOverHttpTests : IDisposable
{
    private const string Lead = "Ines Tallow";
    private const string Slack = "/api/sheets/fell-640/figures/chain.slack";

    private readonly TempFolder folder = new();
    private readonly RunningShop shop;
    private readonly HttpDevice desk;

    public PassphraseAgainOverHttpTests()
    {
        shop = RunningShop.Serve(folder.Path);
        desk = new(shop, "d-desk");
    }

    public void Dispose()
    {
        desk.Dispose();
        shop.Dispose();
        folder.Dispose();
    }

    [Fact]
    public async Task What_a_lead_changes_for_good_asks_for_the_passphrase_when_it_was_not_shown_for_minutes()
    {
        (await desk.Close(Lead, ClosedShop.Passphrase)).Dispose();
        Assert.Equal(HttpStatusCode.OK, await Status(Set(4, Figures.SlackPrinted))); // it was just shown
        Age();
        foreach (
            var ask in (Func<Task<HttpResponseMessage>>[])
                [
                    () => Set(5, "16 to 29 mm"),
                    () => Delete("/api/machines/fell-640-0412/owner"),
                    () => desk.Post("/api/own-shop"),
                    () => desk.Post("/api/door/device-code"),
                    () => desk.Post("/api/door/people/Bram%20Okello/code"),
                    () => Delete("/api/door/devices/d-desk"),
                ]
        )
        {
            using var answer = await ask();
            Assert.Equal(
                "Show once more who you are: an open session is not enough for this.",
                await HttpDevice.Said(answer, "error", HttpStatusCode.PreconditionRequired)
            );
        }
        Assert.DoesNotContain("16 to 29 mm", await Workbench());

        using (var wrong = await desk.Post("/api/door/show", new { secret = "ten grey herons on the weir" }))
            Assert.Equal(HttpStatusCode.Forbidden, wrong.StatusCode);
        Assert.Equal(HttpStatusCode.PreconditionRequired, await Status(Set(5, "16 to 29 mm")));
        await Task.Delay(TimeSpan.FromSeconds(5.5), TestContext.Current.CancellationToken); // what the door waits after a wrong one
        using (var shown = await desk.Post("/api/door/show", new { secret = ClosedShop.Passphrase }))
            Assert.Equal(HttpStatusCode.OK, shown.StatusCode);
        Assert.Equal(HttpStatusCode.OK, await Status(Set(5, "16 to 29 mm")));
        Assert.Contains("16 to 29 mm", await Workbench());
    }

    private Task<HttpResponseMessage> Set(int revision, string printed) =>
        desk.Client.PutAsJsonAsync(Slack, Figures.Slack(revision, printed));

    private Task<HttpResponseMessage> Delete(string path) => desk.Client.DeleteAsync(path);

    private Task<string> Workbench() => desk.Client.GetStringAsync("/api/workbench");

    // as if everybody had signed in six minutes ago
    private void Age()
    {
        using var connection = new SqliteConnection(
            $"Data Source={Path.Combine(folder.Path, "door.db")};Pooling=false"
        );
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = "UPDATE session SET started = started - 360000";
        Assert.Equal(1, command.ExecuteNonQuery());
    }

    private static async Task<HttpStatusCode> Status(Task<HttpResponseMessage> ask)
    {
        using var answer = await ask;
        return answer.StatusCode;
    }
}
