using Witnessmark.Bench.Book;
using Witnessmark.Bench.Planning.Order;

namespace Witnessmark.Bench.Tests.Planning;

/// <summary>Random books of a few points, and where a job on them stands.</summary>
internal static class RandomBooks
{
    private static readonly Point Plain = SmallShop.Bench().Book.Points["polish"] with { Consumables = [] };

    public static OrderQuestion Of(int seed, int points)
    {
        var chance = new Random(seed);
        ReachState[] states =
        [
            new("stand", "", Minutes(2), Minutes(1), TimeSpan.Zero, []),
            new("cover off", "", Minutes(chance.Next(1, 12)), Minutes(chance.Next(1, 12)), TimeSpan.Zero, []),
            new(
                "warm",
                "",
                Minutes(5),
                TimeSpan.Zero,
                Minutes(chance.Next(20, 90)),
                chance.Next(2) == 0 ? ["cover off"] : []
            ),
            new("cold", "", TimeSpan.Zero, TimeSpan.Zero, TimeSpan.Zero, ["warm"]),
            new("road ready", "", TimeSpan.Zero, TimeSpan.Zero, TimeSpan.Zero, ["stand", "cover off"]),
        ];
        var all = Enumerable.Range(0, points).Select(i => Point(i, chance, states)).ToArray();
        var book = new BenchBook(
            all.ToDictionary(p => p.Id),
            new Dictionary<string, IReadOnlyList<PlannedPoint>>(),
            states.ToDictionary(s => s.Name),
            new Dictionary<string, FigureKey>()
        );
        return new OrderQuestion(book, all)
        {
            Now = Consistent(book, states.Where(s => s.Set > TimeSpan.Zero && chance.Next(3) == 0).Select(s => s.Name)),
        };
    }

    /// <summary>The same with the first point done and its wait running, and one that could be in hand.</summary>
    public static OrderQuestion Begun(int seed, int points)
    {
        var (asked, chance) = (Of(seed, points), new Random(seed));
        var (done, open) = (asked.Open[0], asked.Open.Skip(1).ToArray());
        return asked with
        {
            Open = open,
            InHand = open[chance.Next(open.Length)].Id,
            Waiting = done.Waits > TimeSpan.Zero ? new Dictionary<string, TimeSpan> { [done.Id] = done.Waits / 2 } : [],
        };
    }

    private static Point Point(int i, Random chance, ReachState[] states)
    {
        var reach = Some(chance, states.Select(s => s.Name), 4).ToList();
        foreach (var state in reach.ToList())
            if (states.Where(s => reach.Contains(s.Name)).Any(s => s.Never.Contains(state)))
                reach.Remove(state);
        return Plain with
        {
            Id = $"p{i}",
            Title = $"Point {i}",
            Reach = reach,
            Hands = Minutes(chance.Next(1, 30)),
            Waits = Minutes(chance.Next(3) == 0 ? chance.Next(1, 40) : 0),
            After = [.. Some(chance, Enumerable.Range(0, i).Select(j => $"p{j}"), 4)],
        };
    }

    private static IReadOnlyCollection<string> Consistent(BenchBook book, IEnumerable<string> states)
    {
        List<string> kept = [];
        foreach (var state in states)
            if (!kept.Any(k => OrderOracle.Excluded(book, k, state)))
                kept.Add(state);
        return kept;
    }

    private static IEnumerable<T> Some<T>(Random chance, IEnumerable<T> all, int oneIn) =>
        all.Where(_ => chance.Next(oneIn) == 0).ToList();

    private static TimeSpan Minutes(int minutes) => TimeSpan.FromMinutes(minutes);
}
