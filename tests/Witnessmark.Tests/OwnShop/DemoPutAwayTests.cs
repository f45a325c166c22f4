using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.OwnShop;
using Witnessmark.OwnShop;
using Witnessmark.Serve;
using Witnessmark.Tests.Serve;

namespace Witnessmark.Tests.OwnShop;

// Source: own derivation; whenever the power goes, the next start serves the whole demo or the whole new shop.
public sealed class DemoPutAwayTests
{
    private static readonly DateTimeOffset At = new(2026, 11, 29, 19, 5, 7, TimeSpan.Zero);
    private const string Aside = "demo-put-away-20261129-190507";

    [Fact]
    public void Whatever_step_the_power_goes_at_the_next_start_has_the_whole_new_shop()
    {
        var steps = Prepared(out var all).Count;
        all.Dispose();
        Assert.True(steps > 8, $"{steps} steps.");
        for (var cut = 0; cut <= steps; cut++)
        {
            using var folder = Demo();
            DemoPutAway.Begin(folder.Path, Files(folder), At);
            foreach (var _ in DemoPutAway.Steps(folder.Path).Take(cut)) { }
            DemoPutAway.Finish(folder.Path);
            WholeNewShop(folder.Path);
        }
    }

    [Fact]
    public void What_was_prepared_and_not_begun_leaves_the_demo_as_it_was()
    {
        using var folder = Demo();
        var before = Names(folder.Path);
        DemoPutAway.Begin(folder.Path, Files(folder), At);
        Directory.Move(In(folder, "own-shop.begun"), In(folder, "own-shop.preparing")); // as it lies before the one rename
        DemoPutAway.Finish(folder.Path);
        Assert.Equal(before, Names(folder.Path));
        Assert.Equal("harrow-lane", Shop(folder.Path).Workshop.Id);
    }

    [Fact]
    public void The_shop_s_certificates_and_its_bench_book_stay()
    {
        using var folder = Demo();
        File.WriteAllText(In(folder, "keys/authority.pem"), "a");
        DemoPutAway.Begin(folder.Path, Files(folder), At);
        DemoPutAway.Finish(folder.Path);
        Assert.True(File.Exists(In(folder, "keys/authority.pem")));
        Assert.False(File.Exists(In(folder, "keys/shop.json")));
        Assert.True(File.Exists(In(folder, $"{Aside}/keys/shop.json")));
        Assert.NotEmpty(Directory.GetFiles(In(folder, "book")));
    }

    private static void WholeNewShop(string data)
    {
        var bench = Shop(data);
        Assert.Equal("weir-cycles", bench.Workshop.Id);
        Assert.Equal(["harrow-lane"], PutAwayShops.Of(data));
        Assert.False(DemoShop.Is(new(data)));
        string[] gone = ["ledger.db", "ledger.db-wal", "stock.db", "door.db", "photographs/ab/x.jpg", "keys/shop.json"];
        foreach (var name in gone)
        {
            Assert.False(File.Exists(Path.Combine(data, name)), name);
            Assert.Equal(name, File.ReadAllText(Path.Combine(data, Aside, name)));
        }
        Assert.True(File.Exists(Path.Combine(data, Aside, "sheets", "fell-640.toml")));
        Assert.Contains("harrow-lane", File.ReadAllText(Path.Combine(data, Aside, "shop.toml")));
        Assert.Empty(Directory.GetDirectories(data, "own-shop*"));
    }

    private static List<string> Prepared(out TempFolder folder)
    {
        folder = Demo();
        DemoPutAway.Begin(folder.Path, Files(folder), At);
        return [.. DemoPutAway.Steps(folder.Path)];
    }

    private static TempFolder Demo()
    {
        var folder = new TempFolder();
        DemoShop.Fill(new(folder.Path), AppContext.BaseDirectory);
        string[] others =
        [
            "ledger.db",
            "ledger.db-wal",
            "stock.db",
            "door.db",
            "photographs/ab/x.jpg",
            "keys/shop.json",
        ];
        foreach (var name in others)
        {
            Directory.CreateDirectory(Path.GetDirectoryName(In(folder, name))!);
            File.WriteAllText(In(folder, name), name);
        }
        return folder;
    }

    private static IReadOnlyList<Bench.Toml.SourceText> Files(TempFolder folder)
    {
        var (files, mistakes) = NewShopFiles.Of(
            new("Weir Cycles", ["Ada Brook"], "Ada Brook"),
            new DataFolder(folder.Path).Workbench(),
            ["harrow-lane"]
        );
        Assert.Empty(mistakes);
        return [.. files!, new(PutAwayShops.FileName, "harrow-lane\n")];
    }

    private static Workbench Shop(string data) => WorkbenchFiles.Read(new DataFolder(data).Workbench()).Bench!;

    private static string In(TempFolder folder, string name) => Path.Combine(folder.Path, name);

    private static IEnumerable<string> Names(string data) =>
        Directory.EnumerateFiles(data, "*", SearchOption.AllDirectories).Order(StringComparer.Ordinal).ToList();
}
