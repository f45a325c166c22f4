namespace Witnessmark.Bench.Book;

/// <summary>The catalogue of points, and which of them each purpose takes in which order.</summary>
/// <param name="Points">By id.</param>
/// <param name="Purposes">Point ids in bench order, by purpose.</param>
/// <param name="Reach">States that points ask for, by name.</param>
/// <param name="FigureKeys">Figures that points ask for, by key.</param>
public sealed record BenchBook(
    IReadOnlyDictionary<string, Point> Points,
    IReadOnlyDictionary<string, IReadOnlyList<PlannedPoint>> Purposes,
    IReadOnlyDictionary<string, ReachState> Reach,
    IReadOnlyDictionary<string, FigureKey> FigureKeys
)
{
    /// <summary>Common practice, by figure key, to be looked at where a sheet has no figure. Nothing here judges by itself.</summary>
    public IReadOnlyDictionary<string, CommonPractice> CommonPractice { get; init; } =
        new Dictionary<string, CommonPractice>();
}

/// <summary>A point in a plan with the reason why it is there.</summary>
public sealed record PlannedPoint(string Point, string Why);
