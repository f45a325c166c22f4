using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using Witnessmark.Backups;
using Witnessmark.Bench.Record;
using Witnessmark.Doctor;
using Witnessmark.Tests.Doors;
using Witnessmark.Tests.Serve;

namespace Witnessmark.Tests.OwnShop;

public sealed class OwnShopOverHttpTests : IDisposable
{
    private const string Address = "/api/own-shop";
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    private readonly TempFolder folder = new();
    private readonly RunningShop shop;

    public OwnShopOverHttpTests() => shop = RunningShop.Serve(folder.Path);

    public void Dispose()
    {
        shop.Dispose();
        folder.Dispose();
    }

    [Fact]
    public async Task The_demo_goes_aside_and_the_own_shop_is_served_at_the_same_address()
    {
        Assert.True((await shop.Get("/api/workbench")).GetProperty("demo").GetBoolean());
        Assert.Equal(["demo-412"], await shop.Ids());
        var (before, aside) = (await Ledger(), await SetUp());
        Assert.StartsWith("demo-put-away-", aside, StringComparison.Ordinal);
        var after = await LedgerAfter(before);
        Assert.NotEqual(before, after);
        var workbench = await shop.Get("/api/workbench");
        Assert.False(workbench.GetProperty("demo").GetBoolean());
        var file = workbench
            .GetProperty("files")
            .EnumerateArray()
            .Single(f => f.GetProperty("name").GetString() == "shop.toml");
        Assert.Contains("name = \"Weir \\\"Cycles\\\"\"", file.GetProperty("text").GetString());
        Assert.Empty(await shop.Ids());
        Assert.True(File.Exists(Path.Combine(folder.Path, aside, "ledger.db")));
        Assert.Equal(
            "There is nothing here.",
            await Said(
                await shop.Client.GetAsync("/api/nothing", TestContext.Current.CancellationToken),
                HttpStatusCode.NotFound
            )
        );
    }

    [Fact]
    public async Task What_a_device_still_brings_of_the_demo_is_set_aside_and_its_new_work_is_taken_in()
    {
        var chain = Notes.Chain(3);
        await shop.Post(chain[0]);
        var before = await Ledger();
        await SetUp();
        await LedgerAfter(before);
        using var answer = await shop.Post(chain);
        using var receipt = JsonDocument.Parse(
            await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken)
        );
        Assert.Equal(3, receipt.RootElement.GetProperty("upTo").GetInt32());
        Assert.Equal(3, receipt.RootElement.GetProperty("setAside").GetArrayLength());
        Assert.Contains("put away here", receipt.RootElement.GetProperty("setAside")[0].GetProperty("why").GetString());
        Assert.Empty(await shop.Ids());
        using var next = await shop.Post(Next(chain[2]));
        Assert.Equal(["bench-4"], await shop.Ids());
    }

    [Fact]
    public async Task Killed_as_soon_as_it_answered_the_next_start_has_the_own_shop()
    {
        await SetUp();
        shop.Kill();
        using var again = RunningShop.Serve(folder.Path);
        Assert.False((await again.Get("/api/workbench")).GetProperty("demo").GetBoolean());
        Assert.Empty(await again.Ids());
    }

    [Fact]
    public async Task Neither_doctor_nor_backup_trips_over_the_demo_that_was_put_away()
    {
        var before = await Ledger();
        var aside = await SetUp();
        await LedgerAfter(before);
        Assert.DoesNotContain(
            Examination.Of(folder.Path, DateTimeOffset.UtcNow),
            f => !f.Good && f.Of is "files" or "ledger" or "photographs"
        );
        using var into = new TempFolder();
        var (copy, record) = BackupRun.Write(folder.Path, into.Path, DateTimeOffset.UtcNow);
        Assert.DoesNotContain(record.Files, f => f.Name.StartsWith(aside, StringComparison.Ordinal));
        Assert.True(File.Exists(Path.Combine(copy, "shop.toml")));
    }

    [Fact]
    public async Task Mistakes_are_said_as_the_reader_says_them_and_nothing_changes()
    {
        var before = await Ledger();
        using var answer = await Post(before, jurisdiction: "Germany");
        Assert.Contains(
            "shop.toml:6:16: \"Germany\"; right would be a code of ISO 3166",
            await Said(answer, HttpStatusCode.BadRequest)
        );
        Assert.Equal(before, await Ledger());
        Assert.Equal(["demo-412"], await shop.Ids());
    }

    [Fact]
    public async Task Asked_twice_or_of_another_ledger_or_of_no_demo_it_is_refused()
    {
        Assert.Contains("Another ledger", await Said(await Post("elsewhere"), HttpStatusCode.Conflict));
        File.Delete(Path.Combine(folder.Path, "demo"));
        Assert.Contains("no demo", await Said(await Post(await Ledger()), HttpStatusCode.Conflict));
        Assert.Equal(["demo-412"], await shop.Ids());
    }

    [Fact]
    public async Task With_a_closed_door_it_is_for_leads_and_the_own_shop_begins_with_an_open_one()
    {
        using var desk = new HttpDevice(shop, "d-desk");
        var ledger = await Ledger();
        Assert.Equal(
            "Ines Tallow",
            await HttpDevice.Said(await desk.Close("Ines Tallow", ClosedShop.Passphrase), "person")
        );
        Assert.Equal(HttpStatusCode.Unauthorized, (await Post(ledger)).StatusCode);
        using var tablet = new HttpDevice(shop, "d-tablet");
        var code = await HttpDevice.Said(await desk.Post("/api/door/device-code"), "code");
        await tablet.Enrol(code);
        var start = await HttpDevice.Said(await desk.Post("/api/door/people/Bram%20Okello/code"), "code");
        await HttpDevice.Said(await tablet.Start("Bram Okello", start, ClosedShop.Pin), "person");
        Assert.Equal(HttpStatusCode.Forbidden, (await Post(ledger, with: tablet.Client)).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await Post(ledger, with: desk.Client)).StatusCode);
        await LedgerAfter(ledger);
        Assert.False((await shop.Get("/api/door")).GetProperty("closed").GetBoolean());
    }

    private async Task<string> SetUp()
    {
        using var answer = await Post(await Ledger());
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return (await answer.Content.ReadFromJsonAsync<JsonElement>()).GetProperty("putAway").GetString()!;
    }

    private Task<HttpResponseMessage> Post(string ledger, string? jurisdiction = "GB", HttpClient? with = null) =>
        (with ?? shop.Client).PostAsJsonAsync(
            Address,
            new
            {
                ledger,
                shop = new
                {
                    name = "Weir \"Cycles\"",
                    people = new[] { "Ada Brook" },
                    lead = "Ada Brook",
                    jurisdiction,
                },
            }
        );

    private async Task<string> Ledger() => (await shop.Get("/api/workbench")).GetProperty("ledger").GetString()!;

    /// <summary>Waits until another ledger than this is served.</summary>
    private async Task<string> LedgerAfter(string old)
    {
        for (var until = DateTime.UtcNow + Patience; DateTime.UtcNow < until; await Task.Delay(100))
            try
            {
                if (await Ledger() is var now && now != old)
                    return now;
            }
            catch (HttpRequestException)
            {
                // between the one and the other
            }
        return old;
    }

    private static Entry Next(Entry last) =>
        Entries.Sealed(
            new(
                "bench-4",
                "weir-cycles",
                "1",
                EntryKind.Note,
                EntryBody.Note(null, "new"),
                null,
                null,
                last.At,
                "Ada Brook"
            ),
            last.Device,
            last.Epoch,
            last.Seq + 1,
            last.Hash
        );

    private static async Task<string> Said(HttpResponseMessage answer, HttpStatusCode status) =>
        await HttpDevice.Said(answer, "error", status);
}
