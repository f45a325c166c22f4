using System.Net;
using System.Net.Http.Json;
using System.Text.Json;

namespace Witnessmark.Tests.Serve;

public sealed class FiguresEndpointTests : IDisposable
{
    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task A_figure_set_makes_a_revision_that_survives_a_restart_and_keeps_the_one_before()
    {
        using (var shop = RunningShop.Serve(folder.Path))
        {
            using var answer = await Put(shop, "chain.slack", Slack(4, "15 to 30 mm"));
            Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
            Assert.Contains("15 to 30 mm", await Sheet(shop, "sheets/fell-640.toml"), StringComparison.Ordinal);
        }
        using var again = RunningShop.Serve(folder.Path);
        Assert.Contains("15 to 30 mm", await Sheet(again, "sheets/fell-640.toml"), StringComparison.Ordinal);
        Assert.Contains("13 to 32 mm", await Sheet(again, "sheets/fell-640.r4.toml"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Who_looked_at_an_older_revision_is_told_and_changes_nothing()
    {
        using var shop = RunningShop.Serve(folder.Path);
        using var first = await Put(shop, "chain.slack", Slack(4, "15 to 30 mm"));
        using var second = await Put(shop, "chain.slack", Slack(4, "10 to 11 mm"));
        Assert.Equal(HttpStatusCode.Conflict, second.StatusCode);
        Assert.Contains("revision 5", await second.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        Assert.Contains("15 to 30 mm", await Sheet(shop, "sheets/fell-640.toml"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("30 to 15 mm", "Ines Tallow", "swapped")]
    [InlineData("15 to 30 kPa", "Ines Tallow", "is read in mm")]
    [InlineData("15 to 30 mm", " ", "a name is missing")]
    public async Task What_cannot_be_is_refused_with_its_reason(string printed, string by, string said)
    {
        using var shop = RunningShop.Serve(folder.Path);
        using var answer = await Put(shop, "chain.slack", Slack(4, printed, by));
        Assert.False(answer.IsSuccessStatusCode);
        var error = (await answer.Content.ReadFromJsonAsync<JsonElement>()).GetProperty("error").GetString();
        Assert.Contains(said, error, StringComparison.Ordinal);
        Assert.DoesNotContain(
            "fell-640.r4",
            await shop.Client.GetStringAsync("/api/workbench"),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task A_machine_that_stopped_between_the_two_moves_goes_on_from_the_revision_before()
    {
        using (RunningShop.Serve(folder.Path)) { }
        var sheets = Path.Combine(folder.Path, "sheets");
        File.Move(Path.Combine(sheets, "fell-640.toml"), Path.Combine(sheets, "fell-640.r4.toml"));
        using var shop = RunningShop.Serve(folder.Path);
        using var answer = await Put(shop, "chain.slack", Slack(4, "15 to 30 mm"));
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Contains("15 to 30 mm", await Sheet(shop, "sheets/fell-640.toml"), StringComparison.Ordinal);
        Assert.Contains("13 to 32 mm", await Sheet(shop, "sheets/fell-640.r4.toml"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Twenty_at_once_make_one_revision_and_nineteen_are_told()
    {
        using var shop = RunningShop.Serve(folder.Path);
        var answers = await Task.WhenAll(
            Enumerable.Range(0, 20).Select(i => Put(shop, "chain.slack", Slack(4, $"{10 + i} to 40 mm")))
        );
        Assert.Equal(1, answers.Count(a => a.IsSuccessStatusCode));
        Assert.Equal(19, answers.Count(a => a.StatusCode == HttpStatusCode.Conflict));
    }

    internal static object Slack(int revision, string printed, string by = "Ines Tallow") =>
        new
        {
            revision,
            demand = "range",
            printed,
            origin = "maker: handbook p. 88",
            by,
            why = "second edition",
        };

    internal static Task<HttpResponseMessage> Put(RunningShop shop, string key, object figure) =>
        shop.Client.PutAsJsonAsync($"/api/sheets/fell-640/figures/{key}", figure);

    private static async Task<string> Sheet(RunningShop shop, string name)
    {
        var reply = await shop.Client.GetFromJsonAsync<JsonElement>("/api/workbench");
        return reply
            .GetProperty("files")
            .EnumerateArray()
            .Single(f => f.GetProperty("name").GetString() == name)
            .GetProperty("text")
            .GetString()!;
    }
}
