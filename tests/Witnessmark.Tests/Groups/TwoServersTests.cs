using System.Globalization;
using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using Witnessmark.Tests.Doors;
using Witnessmark.Tests.Photographs;
using Witnessmark.Tests.Serve;

namespace Witnessmark.Tests.Groups;

// Source: own derivation; what a balancer may take for granted: it is the same whichever server is asked.
[Collection(StoreCollection.Name)]
public sealed class TwoServersTests : IDisposable
{
    private const string Lead = "Ines Tallow";
    private static int shops;

    private readonly GroupFolder shop;
    private readonly RunningShop one;
    private readonly RunningShop other;

    public TwoServersTests(StoreFixture fixture)
    {
        shop = new($"two_{Interlocked.Increment(ref shops)}", fixture.Store);
        (one, other) = (shop.Serve(), shop.Serve());
    }

    public void Dispose()
    {
        one.Dispose();
        other.Dispose();
        shop.Dispose();
    }

    [Fact]
    public async Task Entries_photographs_shelf_and_signature_are_the_same_at_both()
    {
        using var taken = await one.Post(Notes.Next("bench", 1, null));
        Assert.Equal(["bench-1"], await other.Ids());
        using (var next = await other.Post(Notes.Next("bench", 2, Notes.Next("bench", 1, null).Hash)))
            Assert.Equal(2, (await Json(next)).GetProperty("upTo").GetInt32());

        Assert.Equal(HttpStatusCode.Created, await Put(one));
        Assert.Equal(HttpStatusCode.OK, await Put(other));
        Assert.Equal(TinyPicture.Plain, await Bytes(other, $"/api/photographs/{TinyPicture.Sha256}"));

        var move = new { id = "m1", kind = "receive", item = "split-pin-4", amount = "3", by = Lead };
        Assert.False((await Json(await Post(one, "/api/stock/moves", move))).GetProperty("before").GetBoolean());
        Assert.True((await Json(await Post(other, "/api/stock/moves", move))).GetProperty("before").GetBoolean());

        Assert.Equal(Key(), Key());
        Assert.Equal((0, "Intact: 2 entries in 1 jobs; 0 set aside."), GroupFolder.Run("verify", "--group", shop.Group));
        var (exit, says) = GroupFolder.Run("doctor", "--group", shop.Group);
        Assert.Contains("well   photographs   1, each as its name says.", says);
        Assert.Contains("AMISS  standby       None is waited for", says);
        Assert.Equal(1, exit);
    }

    [Fact]
    public async Task Who_signs_in_at_one_is_in_at_the_other_and_wrong_secrets_count_together()
    {
        using var desk = new HttpDevice(one, "d-desk");
        (await desk.Close(Lead, ClosedShop.Passphrase)).Dispose();
        Assert.Equal(HttpStatusCode.Unauthorized, await Status(other.Client, "/api/workbench"));
        Assert.Equal(HttpStatusCode.OK, await Status(desk.Client, new Uri(other.Client.BaseAddress!, "/api/workbench").ToString()));
        using (var left = await desk.Post(new Uri(other.Client.BaseAddress!, "/api/door/sign-out").ToString()))
            Assert.Equal(HttpStatusCode.OK, left.StatusCode);
        Assert.Equal(HttpStatusCode.Unauthorized, await Status(desk.Client, "/api/workbench"));
        Assert.Equal("That is not it.", await HttpDevice.Said(await desk.SignIn(Lead, "wrong"), "error", HttpStatusCode.Forbidden));
        var (_, code) = GroupFolder.Run("door", "code", "--data", shop.Files, "--group", shop.Group);
        Assert.Contains("lets one device in", code);
        var (exit, book) = GroupFolder.Run("door", "book", "--data", shop.Files, "--group", shop.Group);
        Assert.Contains("A wrong secret for Ines Tallow, 1 in a row.", book);
        Assert.Equal(0, exit);
    }

    [Fact]
    public async Task What_comes_in_at_one_is_told_at_once_to_who_listens_at_the_other()
    {
        using var news = new StreamReader(await other.Client.GetStreamAsync("/api/news", TestContext.Current.CancellationToken));
        Assert.Equal(0, await Head(news));
        using var taken = await one.Post(Notes.Next("bench", 1, null));
        Assert.Equal(1, await Head(news));
    }

    [Theory]
    [InlineData("GET", "/api/machines?find=fell", "register of machines")]
    [InlineData("GET", "/api/machines/fell-640-0412", "register of machines")]
    [InlineData("DELETE", "/api/machines/fell-640-0412/owner", "register of machines")]
    [InlineData("GET", "/api/campaigns?make=Fell&model=640", "Recalls and bulletins")]
    [InlineData("PUT", "/api/sheets/fell-640/figures/chain.slack", "a figure is set in the files")]
    public async Task What_the_store_has_no_place_for_is_refused_by_name(string method, string path, string named)
    {
        using var request = new HttpRequestMessage(new(method), path);
        if (method == "PUT")
            request.Content = JsonContent.Create(new { revision = 1, demand = "range", printed = "1 mm", origin = "x", by = Lead, why = "x" });
        using var answer = await one.Client.SendAsync(request, TestContext.Current.CancellationToken);
        Assert.Contains(named, await HttpDevice.Said(answer, "error", HttpStatusCode.NotImplemented));
    }

    // PostgreSQL 15 documentation, 8.3: the sign with code zero cannot be stored
    [Fact]
    public async Task A_sign_that_the_store_cannot_keep_holds_nothing_up()
    {
        var first = Notes.Next("bench", 1, null);
        var spoilt = Bench.Record.EntryJson.Write(Notes.Next("bench", 2, first.Hash)).ToString().Replace("Ines Tallow", "Ines\\u0000Tallow", StringComparison.Ordinal);
        using var batch = new StringContent(
            $$"""{"protocol":1,"device":"bench","epoch":1,"entries":[{{Bench.Record.EntryJson.Write(first)}},{{spoilt}}]}""",
            System.Text.Encoding.UTF8,
            "application/json"
        );
        using var answer = await one.Client.PostAsync("/api/entries", batch, TestContext.Current.CancellationToken);
        var receipt = await Json(answer);
        Assert.Equal(2, receipt.GetProperty("upTo").GetInt32());
        Assert.Contains("U+0000", receipt.GetProperty("setAside")[0].GetProperty("why").GetString());
    }

    private static async Task<int> Head(StreamReader news)
    {
        using var enough = new CancellationTokenSource(TimeSpan.FromSeconds(8)); // less than it looks by itself
        while (await news.ReadLineAsync(enough.Token) is { } line)
            if (line.StartsWith("data: ", StringComparison.Ordinal))
                return int.Parse(line["data: ".Length..], CultureInfo.InvariantCulture);
        throw new InvalidOperationException("The news ended.");
    }

    private string Key() => GroupFolder.Run("key", "show", "--group", shop.Group).Says;

    private static async Task<HttpStatusCode> Put(RunningShop server)
    {
        using var picture = new ByteArrayContent(TinyPicture.Plain);
        using var answer = await server.Client.PutAsync($"/api/photographs/{TinyPicture.Sha256}", picture);
        return answer.StatusCode;
    }

    private static Task<byte[]> Bytes(RunningShop server, string path) => server.Client.GetByteArrayAsync(path);

    private static Task<HttpResponseMessage> Post(RunningShop server, string path, object body) =>
        server.Client.PostAsJsonAsync(path, body);

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
