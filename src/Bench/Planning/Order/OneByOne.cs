using Witnessmark.Handbook.BenchOrder;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Planning.Order;

/// <summary>
/// How long the points take one after the other, for comparison: in the book's order, each wait sat out, the machine changed only
/// when the next point asks for it.
/// </summary>
internal static class OneByOne
{
    /// <summary>In seconds; endless when the book's order cannot be carried out.</summary>
    public static double Seconds(IReadOnlyList<BenchState> states, IReadOnlyList<BenchTask> tasks)
    {
        BenchTask[] sat = [.. tasks.Select(t => t with { Hands = t.Hands + t.WaitAfter, WaitAfter = new Duration(0) })];
        var near = new NearBook(states, sat);
        return near.Book() is { } steps ? near.End(steps) : double.PositiveInfinity;
    }
}
