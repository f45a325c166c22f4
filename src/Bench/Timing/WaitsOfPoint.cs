using Witnessmark.Bench.Book;

namespace Witnessmark.Bench.Timing;

/// <summary>What takes its time at a point.</summary>
/// <param name="Key">Short, for the timer's id: <c>wait</c>, or the state's name.</param>
/// <param name="Title">What is waited for.</param>
/// <param name="Length">How long.</param>
public sealed record PointWait(string Key, Sentence Title, TimeSpan Length);

/// <summary>The timers that a point asks for: its own wait, and states of the machine that end by themselves.</summary>
public static class WaitsOfPoint
{
    /// <summary>The key of a point's own wait.</summary>
    public const string Own = "wait";

    /// <summary>In the order in which they are offered.</summary>
    public static IReadOnlyList<PointWait> Of(Point point, BenchBook book) =>
        [
            .. point.Waits > TimeSpan.Zero
                ? [new PointWait(Own, Sentence.Of(point.Title), point.Waits)]
                : Array.Empty<PointWait>(),
            .. point
                .Reach.Select(name => book.Reach.GetValueOrDefault(name))
                .OfType<ReachState>()
                .Where(reach => reach.ClearsAfter > TimeSpan.Zero)
                .Select(reach => new PointWait(reach.Name, $"{reach.Name}: over by itself", reach.ClearsAfter)),
        ];
}
