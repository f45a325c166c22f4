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
        await RegistersAndFigures();
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

    private async Task RegistersAndFigures()
    {
        var list = shop.In("machines.csv");
        await File.WriteAllTextAsync(list, "id,name,plate,owner\nm1,Fell 640,HL 1,Ada Brook\n");
        Assert.Contains("1 taken", GroupFolder.Run("machines", "import", list, "--group", shop.Group).Says);
        foreach (var server in (RunningShop[])[one, other])
            Assert.Equal(
                "Ada Brook",
                (await server.Get("/api/machines/m1")).GetProperty("owner").GetProperty("name").GetString()
            );
        using (var gone = await one.Client.DeleteAsync("/api/machines/m1/owner"))
            Assert.True((await Json(gone)).GetProperty("forgotten").GetBoolean());
        Assert.Equal(JsonValueKind.Null, (await other.Get("/api/machines/m1")).GetProperty("owner").ValueKind);

        const string campaigns = "/api/campaigns?make=Tarnmoor&model=Fell%20640&year=2024";
        Assert.False((await one.Get(campaigns)).GetProperty("lookedUp").GetBoolean());
        var recalls = Path.Combine(AppContext.BaseDirectory, "demo", "campaigns", "recalls.tsv");
        Assert.Equal(0, GroupFolder.Run("campaigns", "import", recalls, "--group", shop.Group).Exit);
        foreach (var server in (RunningShop[])[one, other])
            Assert.NotEqual(0, (await server.Get(campaigns)).GetProperty("campaigns").GetArrayLength());

        const string slack = "/api/sheets/fell-640/figures/chain.slack";
        using (var set = await one.Client.PutAsJsonAsync(slack, Figures.Slack(4)))
            Assert.Equal(5, (await Json(set)).GetProperty("revision").GetInt32());
        Assert.Contains(Figures.SlackPrinted, await other.Client.GetStringAsync("/api/workbench"));
        using (var stale = await other.Client.PutAsJsonAsync(slack, Figures.Slack(4, "10 to 11 mm")))
            Assert.Contains("revision 5", await HttpDevice.Said(stale, "error", HttpStatusCode.Conflict));
        using (var wrong = await other.Client.PutAsJsonAsync(slack, Figures.Slack(5, "30 to 15 mm")))
            Assert.Contains("swapped", await HttpDevice.Said(wrong, "error", HttpStatusCode.Conflict));
        using (var next = await other.Client.PutAsJsonAsync(slack, Figures.Slack(5, "16 to 29 mm")))
            Assert.Equal(6, (await Json(next)).GetProperty("revision").GetInt32());
        Assert.Contains("16 to 29 mm", await one.Client.GetStringAsync("/api/workbench"));
        await ManyAtOnce(slack);
        Assert.DoesNotContain(
            ".r",
            string.Concat(Directory.GetFiles(Path.Combine(shop.Files, "sheets")).Select(Path.GetFileName))
        );
        using (var another = shop.Serve()) // one that starts later
            Assert.Contains("16 to 29 mm", await another.Client.GetStringAsync("/api/workbench"));
        await OnlyInAFolder();
    }

    // each server looks at revision 6; of all of them one comes first
    private async Task ManyAtOnce(string slack)
    {
        var answers = await Task.WhenAll(
            Enumerable
                .Range(0, 12)
                .Select(i =>
                    (i % 2 == 0 ? one : other).Client.PutAsJsonAsync(slack, Figures.Slack(6, $"{10 + i} to 40 mm"))
                )
        );
        Assert.Single(answers, a => a.StatusCode == HttpStatusCode.OK);
        Assert.Equal(11, answers.Count(a => a.StatusCode == HttpStatusCode.Conflict));
        foreach (var answer in answers)
            answer.Dispose();
        Assert.Equal(
            await one.Client.GetStringAsync("/api/workbench"),
            await other.Client.GetStringAsync("/api/workbench")
        );
    }

    private async Task OnlyInAFolder()
    {
        using var answer = await one.Client.PostAsJsonAsync("/api/own-shop", new { });
        Assert.Contains("holds no invented one", await HttpDevice.Said(answer, "error", HttpStatusCode.NotImplemented));
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
