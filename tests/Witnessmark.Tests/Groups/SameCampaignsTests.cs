using System.Text;
using System.Text.Json;
using Witnessmark.Bench.Campaigns;
using Witnessmark.Ledger.Campaigns;
using Witnessmark.Ledger.PostgreSql;
using Witnessmark.Tests.Serve;

namespace Witnessmark.Tests.Groups;

// Source: the campaigns in SQLite, whose rules have tests of their own: whatever lists come, both stores count, keep and answer the same.
[Collection(StoreCollection.Name)]
public sealed class SameCampaignsTests(StoreFixture fixture)
{
    private static readonly DateTimeOffset Noon = new(2026, 3, 2, 12, 0, 0, TimeSpan.Zero);

    private static readonly string[] Lines = File.ReadAllLines(
        Path.Combine(AppContext.BaseDirectory, "demo", "campaigns", "recalls.tsv")
    );

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void Whatever_lists_come_both_count_keep_and_answer_the_same(int seed)
    {
        using var shop = new GroupFolder($"campaigns_{seed}", fixture.Store);
        using var folder = new TempFolder();
        using var store = GroupShop.Open(shop.Connection, TimeProvider.System);
        var chance = new Random(seed);
        ImportTotals sum = new(0, 0, 0, 0, 0, 0);
        for (var i = 0; i < 10; i++)
        {
            var list = Encoding.UTF8.GetBytes(string.Concat(Enumerable.Range(0, 30).Select(_ => Drawn(chance) + "\n")));
            var here = Public(CampaignStore.Open(folder.Path), list);
            Assert.Equal(here, Public(store.Campaigns, list));
            sum = Sum(sum, here);
            Campaign[] own = [Own(chance), Own(chance)];
            var (name, number) = ($"own{chance.Next(2)}.toml", $"tw-{chance.Next(6)}");
            Both(folder, store, c => c.ImportOwn(own, name, Noon));
            Both(folder, store, c => c.Withdraw(number, "because", "Ines Tallow", Noon.AddHours(i)));
            foreach (var year in (int?[])[2023, 2024, null])
                Both(folder, store, c => Answer(c, new("TARNMOOR", "Fell 640", year, null, null)));
        }
        Assert.True(
            sum is { New: > 5, Updated: > 5, Unchanged: > 5, Duplicates: > 5, SetAside: > 5 },
            $"Hardly anything met: the test proves little. {sum}"
        );
        Assert.NotEmpty(store.Campaigns.Of(new("Tarnmoor", "FELL 640", 2024, null, null)));
        Assert.NotEmpty(store.Campaigns.WithdrawnSoFar());
        Assert.NotEmpty(store.Campaigns.Alike(new("Tarnmoor", "Fell", 2024, null, null)));
    }

    [Fact]
    public void A_list_that_is_stopped_leaves_everything_as_it_was()
    {
        using var shop = new GroupFolder("campaigns_stopped", fixture.Store);
        using var store = GroupShop.Open(shop.Connection, TimeProvider.System);
        using var stop = new CancellationTokenSource();
        Assert.Throws<OperationCanceledException>(() =>
            store.Campaigns.ImportPublic(
                new MemoryStream(Encoding.UTF8.GetBytes(string.Join('\n', Lines))),
                "recalls.tsv",
                Noon,
                _ => { },
                _ => stop.Cancel(),
                stop.Token
            )
        );
        Assert.Empty(store.Campaigns.Lists());
        Assert.Equal("0", fixture.Store.Value("SELECT count(*) FROM shop_campaigns_stopped.concern"));
    }

    private static void Both(TempFolder folder, GroupShop store, Func<CampaignStore, object> ask) =>
        Assert.Equal(
            JsonSerializer.Serialize(ask(CampaignStore.Open(folder.Path))),
            JsonSerializer.Serialize(ask(store.Campaigns))
        );

    private static object Answer(CampaignStore store, AskedMachine machine) =>
        new
        {
            Of = Sorted(store.Of(machine)),
            Withdrawn = Sorted(store.WithdrawnOf(machine)),
            Lists = store.Lists(),
            SoFar = store.WithdrawnSoFar(),
            Alike = store.Alike(machine),
        };

    private static string[] Sorted(IEnumerable<Campaign> campaigns) =>
        [.. campaigns.Select(c => JsonSerializer.Serialize(c)).Order(StringComparer.Ordinal)];

    private static ImportTotals Public(CampaignStore store, byte[] list) =>
        store.ImportPublic(new MemoryStream(list), "recalls.tsv", Noon, _ => { });

    private static ImportTotals Sum(ImportTotals a, ImportTotals b) =>
        new(
            a.Rows + b.Rows,
            a.New + b.New,
            a.Updated + b.Updated,
            a.Unchanged + b.Unchanged,
            a.Duplicates + b.Duplicates,
            a.SetAside + b.SetAside
        );

    // few machines and few texts, so that records meet: the same again, saying something else, spelt otherwise, not to be read
    private static string Drawn(Random chance)
    {
        var fields = Lines[chance.Next(Lines.Length)].Split('\t');
        fields[1] = $"26X-{chance.Next(4):000}";
        fields[2] = chance.Next(2) == 0 ? "TARNMOOR" : "Tarnmoor";
        fields[3] = chance.Next(3) switch
        {
            0 => "FELL 640",
            1 => "Fell-640",
            _ => "FELL 640 S",
        };
        fields[4] = chance.Next(8) switch
        {
            0 => "9999",
            1 => "year",
            var year => $"{2021 + year / 2}",
        };
        fields[19] = chance.Next(3) == 0 ? "Other words." : fields[19];
        return string.Join('\t', fields);
    }

    private static Campaign Own(Random chance) =>
        new(
            CampaignSource.Own,
            $"TW-{chance.Next(6)}",
            "Tarnmoor",
            "Fell 640",
            2023 + chance.Next(2),
            "Side stand switch",
            new(
                "",
                "",
                null,
                null,
                chance.Next(2) == 0 ? null : new(2026, 1, 1 + chance.Next(5)),
                null,
                "It may stick.",
                "",
                "",
                "",
                chance.Next(3) switch
                {
                    0 => null,
                    1 => true,
                    _ => false,
                },
                null,
                []
            )
        );
}
