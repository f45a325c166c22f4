using Witnessmark.Bench.Book;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Planning.Order;
using Witnessmark.Bench.Toml;

namespace Witnessmark.Benchmarks;

/// <summary>
/// The rest of a job planned anew from where the machine stands: 25 open points of the demo's jobs, one of them in hand; the bar is
/// 200 ms. Beside it the time that the order saves against doing them one after the other.
/// </summary>
internal static class ReplanTimes
{
    private const int Open = 25;
    private const double Bar = 200;

    public static void Print()
    {
        var bench = Demo();
        Console.WriteLine("purpose        asked   median ms   worst ms   of the bar   proven   shorter by");
        foreach (var purpose in bench.Book.Purposes.Keys.Order(StringComparer.Ordinal))
            Line(bench.Book, purpose);
    }

    private static void Line(BenchBook book, string purpose)
    {
        var points = book.Purposes[purpose].Select(p => book.Points[p.Point]).ToList();
        // whatever stretch of the job is left, with each point of it in hand
        var asked = Enumerable
            .Range(0, Math.Max(1, points.Count - Open + 1))
            .Select(from => points.Skip(from).Take(Open).ToList())
            .SelectMany(open => open.Where((_, i) => i % 5 == 0).Select(hand => Standing(book, open, hand)))
            .ToList();
        var orders = asked.Select(a => PlannedOrder.Of(a)).Where(o => o.Holds).Select(o => o.Certain).ToList();
        var times = asked.Select(a => Watch.Least(2, () => PlannedOrder.Of(a))).Order().ToList();
        var saved = orders.Where(o => o.Saved is not null).Select(o => o.Saved!.Value.Seconds / o.OneByOne.Seconds);
        Console.WriteLine(
            $"{purpose, -14} {asked.Count, 5} {times[times.Count / 2], 11:0.0} {times[^1], 10:0.0} {times[^1] / Bar, 12:0.00} {orders.Count(o => o.Plan.Proven), 8} {saved.DefaultIfEmpty(0).Average(), 11:0%}"
        );
    }

    private static OrderQuestion Standing(BenchBook book, IReadOnlyList<Point> open, Point hand) =>
        new(book, open) { InHand = hand.Id, Now = hand.Reach };

    private static Workbench Demo()
    {
        var root = Directory.GetCurrentDirectory();
        string[] files =
        [
            .. Directory.GetFiles(Path.Combine(root, "book"), "*.toml", SearchOption.AllDirectories),
            Path.Combine(root, "demo", "shop.toml"),
            .. Directory.GetFiles(Path.Combine(root, "demo", "sheets"), "*.toml"),
        ];
        var named = files.Select(f => new SourceText(
            Path.GetRelativePath(root, f).Replace('\\', '/').Replace("demo/", ""),
            File.ReadAllText(f)
        ));
        return WorkbenchFiles.Read(named) is ({ } bench, [])
            ? bench
            : throw new InvalidOperationException(
                "To be run from the repository's root: the demo has mistakes, or is not there."
            );
    }
}
