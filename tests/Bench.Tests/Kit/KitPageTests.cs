using System.Globalization;
using System.Text.RegularExpressions;
using Witnessmark.Bench.Stock;
using Witnessmark.Bench.Tests.Book;
using Witnessmark.Bench.Times;

namespace Witnessmark.Bench.Tests.Kit;

/// <summary>What docs/kit.md, docs/stock.md and docs/times.md show is what comes out.</summary>
public partial class KitPageTests
{
    private static readonly string[] Points =
    [
        "drain-plug",
        "oil-filter",
        "oil-first-fill",
        "oil-level",
        "steering-head-nut",
    ];

    [Fact]
    public void The_kit_of_the_page_is_the_kit()
    {
        var bench = DemoFiles.Bench;
        var kit = Witnessmark.Bench.Kit.Kit.For(
            Points.Select(p => bench.Book.Points[p]),
            bench.Newest("fell-640")!,
            bench.Workshop,
            Shelf.Of(Block("kit.md", "moves").Select(Move)),
            new(2026, 11, 25)
        );
        Assert.Equal(
            Block("kit.md", "kit"),
            kit.Lines.Select(l => $"{l.Item} | {l.Quantity} | {string.Join(", ", l.For)} | {l.Note}".TrimEnd())
        );
        Assert.Equal(
            Block("kit.md", "short"),
            kit.Shortages.Select(s => $"{s.Item} | needed {s.Needed} | there {s.There} | {s.Why}")
        );
    }

    [Fact]
    public void The_shelf_of_the_page_is_read_without_a_mistake()
    {
        var shop = DemoFiles.All.Single(s => s.Name == "shop.toml").Text;
        var without = shop[..shop.IndexOf("[stock.", StringComparison.Ordinal)];
        var machines = shop[shop.IndexOf("[machines.", StringComparison.Ordinal)..];
        var page = string.Join('\n', Block("stock.md", "toml"));
        var (bench, mistakes) = Bench.Jobs.WorkbenchFiles.Read(
            DemoFiles.All.Select(s => s.Name == "shop.toml" ? s with { Text = $"{without}{page}\n{machines}" } : s)
        );
        Assert.Empty(mistakes);
        Assert.Equal(3, bench!.Workshop.Stock.Count);
    }

    [Fact]
    public void The_times_of_the_page_are_those_that_are_learnt() =>
        Assert.Equal(
            Block("times.md", "times"),
            new[] { "doings | shop | own" }.Concat(
                new[] { 0, 1, 2, 4, 16, 64 }.Select(n =>
                {
                    var learnt = TimeShrinkage.Of(
                        600,
                        new Dictionary<string, IReadOnlyList<double>> { ["x"] = [.. Enumerable.Repeat(900.0, n)] }
                    );
                    var own = learnt.Own.GetValueOrDefault("x", learnt.Shop);
                    return string.Create(
                        CultureInfo.InvariantCulture,
                        $"{n} | {learnt.Shop / 60:0.0} | {own / 60:0.0}"
                    );
                })
            )
        );

    private static StockMove Move(string line)
    {
        var words = MoveLine().Match(line);
        Assert.True(words.Success, line);
        var size = words.Groups[3].Success ? words.Groups[3].Value : null;
        return new(
            line,
            StockMoveKind.Received,
            new(words.Groups[1].Value, size),
            decimal.Parse(words.Groups[2].Value, CultureInfo.InvariantCulture),
            "Ines Tallow",
            "2026-11-25"
        );
    }

    private static string[] Block(string page, string language) =>
        Fence()
            .Matches(DemoFiles.Text($"docs/{page}"))
            .Single(m => m.Groups[1].Value == language)
            .Groups[2]
            .Value.TrimEnd('\n')
            .Split('\n');

    [GeneratedRegex("^receive ([^ ]+) ([^ ]+)(?: of (.+))?$")]
    private static partial Regex MoveLine();

    [GeneratedRegex("^```([^\n]+)\n(.*?)^```$", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Fence();
}
