using Witnessmark.Bench.Book;
using Witnessmark.Bench.Times;

namespace Witnessmark.Bench.Planning.Order;

/// <summary>What is still to do, and from where.</summary>
/// <param name="Book">States and points.</param>
/// <param name="Open">The points that are still to do, in the book's order.</param>
public sealed record OrderQuestion(BenchBook Book, IReadOnlyList<Point> Open)
{
    /// <summary>States that the machine is in now.</summary>
    public IReadOnlyCollection<string> Now { get; init; } = [];

    /// <summary>What is left of the time until a state ends by itself, where it is known.</summary>
    public IReadOnlyDictionary<string, TimeSpan> Cooling { get; init; } = new Dictionary<string, TimeSpan>();

    /// <summary>What is in hand: it stays first.</summary>
    public string? InHand { get; init; }

    /// <summary>Points that are done but whose wait still runs, with what is left of it.</summary>
    public IReadOnlyDictionary<string, TimeSpan> Waiting { get; init; } = new Dictionary<string, TimeSpan>();

    /// <summary>How long points take.</summary>
    public PlanTimes Times { get; init; } = PlanTimes.ByTheBook;
}
