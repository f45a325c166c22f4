using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using Witnessmark.Bench.Record;
using Witnessmark.Doors;
using Witnessmark.Tests.Serve;

namespace Witnessmark.Tests.Doors;

public sealed class DoorOverHttpTests : IDisposable
{
    private const string Lead = "Ines Tallow";
    private const string Technician = "Bram Okello";
    private const string Passphrase = ClosedShop.Passphrase;
    private const string Pin = ClosedShop.Pin;

    private readonly TempFolder folder = new();
    private readonly RunningShop shop;
    private readonly HttpDevice desk;
    private readonly HttpDevice tablet;

    public DoorOverHttpTests()
    {
        shop = RunningShop.Serve(folder.Path);
        (desk, tablet) = (new(shop, "d-desk"), new(shop, "d-tablet"));
    }

    public void Dispose()
    {
        desk.Dispose();
        tablet.Dispose();
        shop.Dispose();
        folder.Dispose();
    }

    [Fact]
    public async Task With_a_closed_door_nothing_of_the_shop_is_given_to_a_stranger()
    {
        Assert.Equal(HttpStatusCode.OK, (await Get(shop.Client, "/api/workbench")).StatusCode);
        Assert.Equal(Lead, await HttpDevice.Said(await desk.Close(Lead, Passphrase), "person"));
        foreach (var path in Paths)
        {
            using var request = new HttpRequestMessage(new(path.Method), path.Address);
            if (path.Method is "POST" or "PUT")
                request.Content = JsonContent.Create(new { });
            using var answer = await Send(shop.Client, request);
            Assert.Equal(HttpStatusCode.Unauthorized, answer.StatusCode);
        }
        Assert.Equal(HttpStatusCode.OK, (await Get(shop.Client, "/api/health")).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await Get(desk.Client, "/api/workbench")).StatusCode);
    }

    private static readonly (string Method, string Address)[] Paths =
    [
        ("GET", "/api/workbench"),
        ("GET", "/api/entries"),
        ("POST", "/api/entries"),
        ("PUT", "/api/sheets/fell-640/figures/chain.slack"),
        ("GET", "/api/day"),
        ("GET", "/api/campaigns"),
        ("GET", "/api/machines?find=fell"),
        ("GET", "/api/stock"),
        ("POST", "/api/stock/moves"),
        ("DELETE", "/api/machines/fell-640-0412/owner"),
        ("GET", "/api/jobs/412/handover.pdf"),
        ("GET", "/api/jobs/412/log-book.json"),
        ("GET", "/api/door/book"),
        ("POST", "/api/door/device-code"),
        ("POST", "/api/door/people/Bram%20Okello/code"),
        ("DELETE", "/api/door/devices/d-desk"),
        ("POST", "/api/door/confirm"),
        ("POST", "/api/door/show"),
        ("POST", "/api/door/secret"),
        ("POST", "/api/door/here"),
    ];

    [Fact]
    public async Task A_technician_works_and_does_not_do_what_leads_do()
    {
        await BramIsIn();
        Assert.Equal(HttpStatusCode.OK, (await Get(tablet.Client, "/api/workbench")).StatusCode);
        using var book = await Get(tablet.Client, "/api/door/book");
        Assert.Contains("This is for a lead", await HttpDevice.Said(book, "error", HttpStatusCode.Forbidden));
        using var figure = await Put(tablet.Client, "/api/sheets/fell-640/figures/chain.slack", new { });
        Assert.Equal(HttpStatusCode.Forbidden, figure.StatusCode);
        using var move = await tablet.Post(
            "/api/stock/moves",
            new
            {
                id = "m1",
                kind = "receive",
                item = "split-pin-4",
                amount = "3",
                by = Lead,
            }
        );
        Assert.Contains("not who is signed in", await HttpDevice.Said(move, "error", HttpStatusCode.Forbidden));
        Assert.Contains($"{Technician} asked for what is for a lead", await Text(desk.Client, "/api/door/book"));
    }

    [Fact]
    public async Task A_device_brings_its_own_entries_only_and_those_of_others_are_noted()
    {
        await BramIsIn();
        var mine = Note(tablet.Id, 1, null, Technician);
        using var foreign = await Bring(Note("d-desk", 1, null, Lead));
        Assert.Contains("cannot bring them", await HttpDevice.Said(foreign, "error", HttpStatusCode.Forbidden));
        Assert.Equal(HttpStatusCode.OK, (await Bring(mine)).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await Bring(Note(tablet.Id, 2, mine.Hash, Lead))).StatusCode);
        var book = await Json(desk.Client, "/api/door/book");
        Assert.Contains(
            book.GetProperty("events").EnumerateArray(),
            e => e.GetProperty("says").GetString()!.Contains($"brought entries of {Lead}: 1", StringComparison.Ordinal)
        );
    }

    [Fact]
    public async Task The_session_is_in_a_cookie_that_no_script_reads_and_no_other_site_sends()
    {
        using var closed = await desk.Close(Lead, Passphrase);
        var cookie = closed.Headers.GetValues("Set-Cookie").Single();
        Assert.Contains("httponly", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("samesite=strict", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("expires", cookie, StringComparison.OrdinalIgnoreCase);
        using var left = await desk.Post("/api/door/sign-out");
        Assert.Equal(HttpStatusCode.OK, left.StatusCode);
        Assert.Equal(HttpStatusCode.Unauthorized, (await Get(desk.Client, "/api/workbench")).StatusCode);
    }

    // W3C Fetch Metadata, 2.3: a browser says where a request came from
    [Theory]
    [InlineData("Sec-Fetch-Site", "cross-site")]
    [InlineData("Sec-Fetch-Site", "same-site")]
    [InlineData("Origin", "http://elsewhere.example")]
    [InlineData("Origin", "null")]
    public async Task The_page_of_another_site_changes_nothing(string header, string value)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, "/api/door/sign-out");
        request.Headers.Add(header, value);
        using var answer = await Send(shop.Client, request);
        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
    }

    [Fact]
    public async Task An_open_shop_speaks_to_its_own_computer_by_its_own_name_only()
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, "/api/workbench");
        request.Headers.Host = "shop.elsewhere.example"; // what a page of elsewhere would make the browser say, its name pointing here
        using var answer = await Send(shop.Client, request);
        Assert.Contains("never closed", await HttpDevice.Said(answer, "error", HttpStatusCode.Forbidden));
    }

    [Fact]
    public async Task With_its_door_closed_the_shop_says_nothing_to_others_without_HTTPS()
    {
        using var closed = await desk.Close(Lead, Passphrase);
        using var request = new HttpRequestMessage(HttpMethod.Get, "/api/door");
        request.Headers.Host = "192.168.7.20"; // as another device would name it
        using var answer = await Send(desk.Client, request);
        Assert.Contains("over https only", await HttpDevice.Said(answer, "error", HttpStatusCode.Forbidden));
    }

    [Fact]
    public async Task Who_knocks_too_often_waits()
    {
        using var closed = await desk.Close(Lead, Passphrase);
        var answers = new List<HttpStatusCode>();
        for (var i = 0; i < 70; i++)
            answers.Add((await tablet.Post("/api/door/names")).StatusCode);
        Assert.Equal(HttpStatusCode.TooManyRequests, answers[^1]);
        Assert.Equal(HttpStatusCode.Forbidden, answers[0]);
    }

    [Fact]
    public async Task A_device_that_asks_for_papers_all_the_time_waits_and_the_others_do_not()
    {
        await BramIsIn();
        var answers = new List<HttpStatusCode>();
        for (var i = 0; i < DeviceLimit.Papers + 5; i++)
            answers.Add((await Get(tablet.Client, "/api/jobs/none/label.pdf?kind=key")).StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, answers[0]);
        Assert.Equal(HttpStatusCode.TooManyRequests, answers[^1]);
        Assert.Equal(HttpStatusCode.OK, (await Get(tablet.Client, "/api/entries")).StatusCode); // it works on
        Assert.Equal(HttpStatusCode.NotFound, (await Get(desk.Client, "/api/jobs/none/label.pdf?kind=key")).StatusCode);
    }

    [Fact]
    public async Task A_release_that_nobody_confirmed_does_not_count_on_paper()
    {
        await BramIsIn();
        var unconfirmed = Release(1, null, "made up");
        Assert.Equal(HttpStatusCode.OK, (await Bring(unconfirmed)).StatusCode);
        using var wrong = await tablet.Post("/api/door/confirm", new { job = "412", secret = "111112" });
        Assert.Equal(HttpStatusCode.Forbidden, wrong.StatusCode);
        using var right = await tablet.Post("/api/door/confirm", new { job = "412", secret = Pin });
        var confirmed = Release(2, unconfirmed.Hash, await HttpDevice.Said(right, "confirmed"));
        Assert.Equal(HttpStatusCode.OK, (await Bring(confirmed)).StatusCode);
        var paper = await Text(desk.Client, "/api/jobs/412/log-book.json");
        Assert.Contains(confirmed.Id, paper, StringComparison.Ordinal);
        Assert.DoesNotContain(unconfirmed.Id, paper, StringComparison.Ordinal);
        var book = await Json(desk.Client, "/api/door/book");
        Assert.Single(
            book.GetProperty("events").EnumerateArray(),
            e => e.GetProperty("says").GetString()!.Contains("does not count on paper", StringComparison.Ordinal)
        );
    }

    [Fact]
    public async Task Who_is_taken_off_the_list_is_out_at_once_and_a_broken_list_puts_nobody_out()
    {
        await BramIsIn();
        var file = Path.Combine(folder.Path, "shop.toml");
        var list = await File.ReadAllTextAsync(file, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.OK, (await Get(tablet.Client, "/api/entries")).StatusCode);
        await Write(file, list + "\nno toml", 1);
        Assert.Equal(HttpStatusCode.OK, (await Get(tablet.Client, "/api/entries")).StatusCode);
        Assert.Contains($"\"{Technician}\"", list, StringComparison.Ordinal);
        await Write(file, list.Replace($"\"{Technician}\"", "\"Odo Fenn\"", StringComparison.Ordinal), 2);
        Assert.Equal(HttpStatusCode.Unauthorized, (await Get(tablet.Client, "/api/entries")).StatusCode);
        Assert.Equal(HttpStatusCode.Forbidden, (await tablet.SignIn(Technician, Pin)).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await Get(desk.Client, "/api/entries")).StatusCode);
        Assert.Contains("Odo Fenn", await Text(desk.Client, "/api/workbench"), StringComparison.Ordinal);
    }

    // the time of a file may be as coarse as a second
    private static async Task Write(string file, string text, int seconds)
    {
        await File.WriteAllTextAsync(file, text, TestContext.Current.CancellationToken);
        File.SetLastWriteTimeUtc(file, DateTime.UtcNow.AddSeconds(seconds));
    }

    [Fact]
    public async Task Somebody_changes_their_own_secret_with_the_one_before()
    {
        await BramIsIn();
        using var wrong = await tablet.Post("/api/door/secret", new { secret = "111112", next = "570816" });
        Assert.Equal(HttpStatusCode.Forbidden, wrong.StatusCode);
        using var common = await tablet.Post("/api/door/secret", new { secret = Pin, next = "123456" });
        Assert.Equal(HttpStatusCode.BadRequest, common.StatusCode);
        using var changed = await tablet.Post("/api/door/secret", new { secret = Pin, next = "570816" });
        Assert.Equal(Technician, await HttpDevice.Said(changed, "person"));
        Assert.Equal(HttpStatusCode.OK, (await Get(tablet.Client, "/api/entries")).StatusCode); // in anew
        Assert.Equal(HttpStatusCode.Forbidden, (await tablet.SignIn(Technician, Pin)).StatusCode);
        Assert.Equal("technician", await HttpDevice.Said(await tablet.SignIn(Technician, "570816"), "role"));
        Assert.Contains($"{Technician} changed their secret.", await Text(desk.Client, "/api/door/book"));
    }

    private static Task<HttpResponseMessage> Get(HttpClient client, string path) => client.GetAsync(path);

    private static Task<string> Text(HttpClient client, string path) => client.GetStringAsync(path);

    private static Task<JsonElement> Json(HttpClient client, string path) => client.GetFromJsonAsync<JsonElement>(path);

    private static Task<HttpResponseMessage> Send(HttpClient client, HttpRequestMessage request) =>
        client.SendAsync(request);

    private static Task<HttpResponseMessage> Put(HttpClient client, string path, object body) =>
        client.PutAsJsonAsync(path, body);

    private async Task BramIsIn()
    {
        (await desk.Close(Lead, Passphrase)).Dispose();
        var code = await HttpDevice.Said(await desk.Post("/api/door/device-code"), "code");
        Assert.Equal("Tablet d-tablet", await HttpDevice.Said(await tablet.Enrol(code), "label"));
        code = await HttpDevice.Said(await desk.Post("/api/door/people/Bram%20Okello/code"), "code");
        Assert.Equal("technician", await HttpDevice.Said(await tablet.Start(Technician, code, Pin), "role"));
    }

    private Task<HttpResponseMessage> Bring(Entry entry) =>
        tablet.Post(
            "/api/entries",
            new
            {
                protocol = 1,
                device = entry.Device,
                epoch = 1,
                entries = new[] { EntryJson.Write(entry) },
            }
        );

    private Entry Release(int seq, string? previous, string confirmed) =>
        Sealed(
            EntryKind.Release,
            EntryBody.Release(Technician, confirmed: confirmed),
            tablet.Id,
            seq,
            previous,
            Technician
        );

    private static Entry Note(string device, int seq, string? previous, string by) =>
        Sealed(EntryKind.Note, EntryBody.Note(null, "Seen at the door."), device, seq, previous, by);

    private static Entry Sealed(string kind, JsonElement body, string device, int seq, string? previous, string by) =>
        Entries.Sealed(
            new(
                Guid.NewGuid().ToString("N"),
                "harrow-lane",
                "412",
                kind,
                body,
                null,
                null,
                "2026-11-29T10:00:00.000+00:00",
                by
            ),
            device,
            1,
            seq,
            previous
        );
}
