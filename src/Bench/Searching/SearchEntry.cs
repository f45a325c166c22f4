namespace Witnessmark.Bench.Searching;

/// <summary>Something that a search leads to.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Title">What it is called.</param>
/// <param name="Detail">What tells it from others of that name; empty when nothing has to.</param>
/// <param name="Path">Where it is shown.</param>
public sealed record SearchEntry(SearchKind Kind, string Title, string Detail, string Path)
{
    /// <summary>Numbers that it goes by, however they are spaced: of a job, on a plate, on a frame.</summary>
    public IReadOnlyList<string> Numbers { get; init; } = [];

    /// <summary>What it can be found by besides, though it is not shown.</summary>
    public string Also { get; init; } = "";
}

/// <summary>Kinds of what a search leads to.</summary>
public enum SearchKind
{
    Point,
    Job,
    Area,
    Machine,
    Figure,
    Calculation,
    JobDone,
    PointBefore,
}
