using System.Text.Json;
using Witnessmark.Bench.Record;
using Witnessmark.Ledger;
using Witnessmark.Ledger.PostgreSql;
using Witnessmark.Ledger.Sqlite;
using Witnessmark.Tests.Serve;

namespace Witnessmark.Tests.Groups;

// Source: the ledger in SQLite, whose rules have tests of their own: whatever comes, both stores say and keep the same.
[Collection(StoreCollection.Name)]
public sealed class SameRulesTests(StoreFixture fixture)
{
    private const int Batches = 50;
    private static readonly string[] Devices = ["bench-a", "bench-b"];

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void Whatever_comes_in_whatever_order_both_stores_answer_and_keep_the_same(int seed)
    {
        using var shop = new GroupFolder($"rules_{seed}", fixture.Store);
        using var folder = new TempFolder();
        using var store = GroupShop.Open(shop.Connection, TimeProvider.System);
        using var file = SqliteLedger.Open(folder.Path, TimeProvider.System);
        var chance = new Random(seed);
        var setAside = 0;
        for (var i = 0; i < Batches; i++)
        {
            var batch = Drawn(chance);
            var (kept, here) = (store.Ledger.Accept(batch), file.Accept(batch));
            Assert.Equal(Text(here), Text(kept));
            setAside = Math.Max(setAside, here.SetAside.Count);
        }
        Assert.True(setAside > 3, "Hardly anything was odd: the test proves little.");
        Assert.Equal(All(file), All(store.Ledger));
        Assert.Equal(Aside(file), Aside(store.Ledger));
        Assert.Equal(
            file.Jobs().Select(j => (j.Job, j.Entries, j.Hash)),
            store.Ledger.Jobs().Select(j => (j.Job, j.Entries, j.Hash))
        );
        Assert.Equal(Text(SqliteLedger.Check(folder.Path)), Text(store.Check()));
        Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
    }

    [Fact]
    public void Entries_are_found_by_job_machine_and_name_as_in_a_file()
    {
        using var shop = new GroupFolder("found", fixture.Store);
        using var folder = new TempFolder();
        using var store = GroupShop.Open(shop.Connection, TimeProvider.System);
        using var file = SqliteLedger.Open(folder.Path, TimeProvider.System);
        var arrival = Entries.Sealed(
            new(
                "a1",
                "harrow-lane",
                "412",
                EntryKind.Arrival,
                JsonSerializer.Deserialize<JsonElement>("""{"machine":"fell%1_","sheet":"fell-640"}"""),
                null,
                null,
                "2026-03-02T09:15:00Z",
                "Ines Tallow"
            ),
            "desk",
            1,
            1,
            null
        );
        foreach (var ledger in (ShopLedger[])[store.Ledger, file])
        {
            ledger.Accept(new("desk", 1, [EntryJson.Write(arrival)]));
            ledger.Accept(new("bench", 1, [EntryJson.Write(Notes.Next("bench", 1, null))]));
        }
        Assert.Equal(["412"], store.Ledger.JobsOf("fell%1_"));
        Assert.Empty(store.Ledger.JobsOf("fell"));
        Assert.Equal(["a1", "bench-1"], store.Ledger.OfJobsNaming("fell-640").Single().Select(e => e.Id));
        Assert.Empty(store.Ledger.OfJobsNaming("fell_640"));
        Assert.Equal(All(file), All(store.Ledger));
        Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
    }

    // of short chains, so that the same comes again: in order, with gaps, twice, under a number or an id that another has, spoilt
    private static Batch Drawn(Random chance)
    {
        var device = Devices[chance.Next(Devices.Length)];
        var chain = new List<Entry>();
        while (chain.Count < 12)
            chain.Add(Notes.Next(device, chain.Count + 1, chain.LastOrDefault()?.Hash));
        return new(
            device,
            1,
            [.. Enumerable.Range(0, chance.Next(1, 6)).Select(_ => Odd(chain[chance.Next(chain.Count)], chance))]
        );
    }

    private static JsonElement Odd(Entry entry, Random chance)
    {
        var json = EntryJson.Write(entry).ToString();
        return JsonSerializer.Deserialize<JsonElement>(
            chance.Next(8) switch
            {
                0 => json.Replace("24.4 mm", "25.4 mm", StringComparison.Ordinal), // its hash does not fit
                1 => $$"""{"device":"{{entry.Device}}","seq":{{entry.Seq}},"odd":"\u0000"}""",
                2 when entry.Seq > 1 => EntryJson
                    .Write(Notes.Next(entry.Device, entry.Seq, new string('0', 64)))
                    .ToString(), // bound elsewhere
                3 when entry.Seq > 1 => EntryJson
                    .Write(Notes.Next(entry.Device, entry.Seq + 1, entry.DevicePrevious))
                    .ToString(),
                _ => json,
            }
        );
    }

    private static string Text(Receipt receipt) => JsonSerializer.Serialize(new { receipt.UpTo, receipt.SetAside });

    private static string Text(LedgerFinding finding) => JsonSerializer.Serialize(finding);

    private static List<string> All(ShopLedger ledger) =>
        [.. ledger.After(0).Entries.Select(e => $"{e.Order} {EntryJson.Write(e.Entry)}")];

    private static List<string> Aside(ShopLedger ledger) =>
        [.. ledger.SetAside().Select(a => $"{a.Number} {a.Reason} {a.Why} {a.Text}")];
}
