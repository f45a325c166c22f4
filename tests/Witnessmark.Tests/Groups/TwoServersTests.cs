using System.Globalization;
using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using Witnessmark.Bench.Record;
using Witnessmark.Groups;
using Witnessmark.Tests.Doors;
using Witnessmark.Tests.Photographs;
using Witnessmark.Tests.Serve;
using Witnessmark.Verify;

namespace Witnessmark.Tests.Groups;

// Source: own derivation; what a balancer may take for granted: it is the same whichever server is asked.
[Collection(StoreCollection.Name)]
public sealed class TwoServersTests : IDisposable
{
    private const string Lead = "Ines Tallow";

    private readonly GroupFolder shop;
    private readonly RunningShop one;
    private readonly RunningShop other;

    public TwoServersTests(StoreFixture fixture)
    {
        shop = new("two", fixture.Store);
        (one, other) = (shop.Serve(), shop.Serve());
    }

    public void Dispose()
    {
        one.Dispose();
        other.Dispose();
        shop.Dispose();
    }

    // one test, since the two servers take longer to start than all of it
    [Fact]
    public async Task Whatever_one_has_the_other_has()
    {
        await News();
        await EntriesPhotographsAndShelf();
        await NothingBesideTheStore();
        await ASignThatTheStoreCannotKeep();
        Examined();
        await TheDoor();
    }

    private async Task News()
    {
        using var news = new StreamReader(await other.Client.GetStreamAsync("/api/news"));
        Assert.Equal(0, await Head(news));
        using var taken = await one.Post(Notes.Next("bench", 1, null));
        Assert.Equal(1, await Head(news)); // sooner than it looks by itself
    }

    private async Task EntriesPhotographsAndShelf()
    {
        Assert.Equal(["bench-1"], await other.Ids());
        using (var next = await other.Post(Notes.Next("bench", 2, Notes.Next("bench", 1, null).Hash)))
            Assert.Equal(2, (await Json(next)).GetProperty("upTo").GetInt32());
        Assert.Equal(HttpStatusCode.Created, await Put(one));
        Assert.Equal(HttpStatusCode.OK, await Put(other));
        Assert.Equal(TinyPicture.Plain, await other.Client.GetByteArrayAsync($"/api/photographs/{TinyPicture.Sha256}"));
        var move = new
        {
            id = "m1",
            kind = "receive",
            item = "split-pin-4",
            amount = "3",
            by = Lead,
        };
        Assert.False((await Json(await Post(one, move))).GetProperty("before").GetBoolean());
        Assert.True((await Json(await Post(other, move))).GetProperty("before").GetBoolean());
    }

    private async Task NothingBesideTheStore()
    {
        foreach (
            var (method, path, named) in new[]
            {
                ("GET", "/api/machines?find=fell", "register of machines"),
                ("GET", "/api/machines/fell-640-0412", "register of machines"),
                ("DELETE", "/api/machines/fell-640-0412/owner", "register of machines"),
                ("GET", "/api/campaigns?make=Fell&model=640", "Recalls and bulletins"),
                ("PUT", "/api/sheets/fell-640/figures/chain.slack", "a figure is set in the files"),
            }
        )
        {
            using var request = new HttpRequestMessage(new(method), path);
            if (method == "PUT")
                request.Content = JsonContent.Create(
                    new
                    {
                        revision = 1,
                        demand = "range",
                        printed = "1 mm",
                        origin = "x",
                        by = Lead,
                        why = "x",
                    }
                );
            using var answer = await one.Client.SendAsync(request);
            Assert.Contains(named, await HttpDevice.Said(answer, "error", HttpStatusCode.NotImplemented));
        }
    }

    // PostgreSQL 15 documentation, 8.3: the sign with code zero cannot be stored
    private async Task ASignThatTheStoreCannotKeep()
    {
        var first = Notes.Next("odd", 1, null);
        var spoilt = EntryJson
            .Write(Notes.Next("odd", 2, first.Hash))
            .ToString()
            .Replace(Lead, "Ines\\u0000Tallow", StringComparison.Ordinal);
        using var batch = new StringContent(
            $$"""{"protocol":1,"device":"odd","epoch":1,"entries":[{{EntryJson.Write(first)}},{{spoilt}}]}""",
            System.Text.Encoding.UTF8,
            "application/json"
        );
        using var answer = await one.Client.PostAsync("/api/entries", batch);
        var receipt = await Json(answer);
        Assert.Equal(2, receipt.GetProperty("upTo").GetInt32());
        Assert.Contains("U+0000", receipt.GetProperty("setAside")[0].GetProperty("why").GetString());
    }

    private void Examined()
    {
        var says = new StringWriter();
        Assert.Equal(0, VerifyLedger.Run(() => GroupFile.Read(shop.Group), says, says, false));
        Assert.Equal("Intact: 3 entries in 1 jobs; 1 set aside.", says.ToString().Trim());
        var findings = GroupExamination.Of(GroupFile.Read(shop.Group), DateTimeOffset.UtcNow);
        Assert.Equal("1, each as its name says.", findings.Single(f => f.Of == "photographs").Says);
        Assert.Equal(["standby"], findings.Where(f => !f.Good).Select(f => f.Of));
    }

    private async Task TheDoor()
    {
        using var desk = new HttpDevice(one, "d-desk");
        (await desk.Close(Lead, ClosedShop.Passphrase)).Dispose();
        var there = new Uri(other.Client.BaseAddress!, "/api/workbench").ToString();
        Assert.Equal(HttpStatusCode.Unauthorized, await Status(other.Client, "/api/workbench"));
        Assert.Equal(HttpStatusCode.OK, await Status(desk.Client, there));
        using (var left = await desk.Post(new Uri(other.Client.BaseAddress!, "/api/door/sign-out").ToString()))
            Assert.Equal(HttpStatusCode.OK, left.StatusCode);
        Assert.Equal(HttpStatusCode.Unauthorized, await Status(desk.Client, "/api/workbench"));
        var wrong = await desk.SignIn(Lead, "wrong");
        Assert.Equal("That is not it.", await HttpDevice.Said(wrong, "error", HttpStatusCode.Forbidden));
        var (exit, book) = GroupFolder.Run("door", "book", "--data", shop.Files, "--group", shop.Group);
        Assert.Contains("A wrong secret for Ines Tallow, 1 in a row.", book);
        Assert.Equal(0, exit);
    }

    private static async Task<int> Head(StreamReader news)
    {
        using var enough = new CancellationTokenSource(TimeSpan.FromSeconds(8)); // less than it looks by itself
        while (await news.ReadLineAsync(enough.Token) is { } line)
            if (line.StartsWith("data: ", StringComparison.Ordinal))
                return int.Parse(line["data: ".Length..], CultureInfo.InvariantCulture);
        throw new InvalidOperationException("The news ended.");
    }

    private static async Task<HttpStatusCode> Put(RunningShop server)
    {
        using var picture = new ByteArrayContent(TinyPicture.Plain);
        using var answer = await server.Client.PutAsync($"/api/photographs/{TinyPicture.Sha256}", picture);
        return answer.StatusCode;
    }

    private static Task<HttpResponseMessage> Post(RunningShop server, object move) =>
        server.Client.PostAsJsonAsync("/api/stock/moves", move);

    private static async Task<HttpStatusCode> Status(HttpClient client, string path)
    {
        using var answer = await client.GetAsync(path);
        return answer.StatusCode;
    }

    private static async Task<JsonElement> Json(HttpResponseMessage answer)
    {
        var said = await answer.Content.ReadAsStringAsync();
        Assert.True(answer.IsSuccessStatusCode, said);
        return JsonSerializer.Deserialize<JsonElement>(said);
    }
}
