namespace Witnessmark.Bench.Figures;

/// <summary>One figure in two revisions of a sheet.</summary>
/// <param name="Key">Of the figure.</param>
/// <param name="Before">As it stands in the earlier one, or null.</param>
/// <param name="After">As it stands in the later one, or null.</param>
public sealed record ComparedFigure(string Key, Figure? Before, Figure? After)
{
    /// <summary>Whether the two say different things.</summary>
    public bool Differs => Before?.InSheet != After?.InSheet;
}

/// <summary>Two revisions of a sheet side by side.</summary>
public static class SheetComparison
{
    /// <summary>Every figure that stands in either, in the order of the later one; what only the earlier one has comes last.</summary>
    public static IReadOnlyList<ComparedFigure> Of(FigureSheet before, FigureSheet after) =>
        [
            .. after
                .Figures.Keys.Concat(before.Figures.Keys)
                .Distinct()
                .Select(k => new ComparedFigure(
                    k,
                    before.Figures.GetValueOrDefault(k),
                    after.Figures.GetValueOrDefault(k)
                )),
        ];
}

/// <summary>How a sheet came to stand as it does.</summary>
public static class SheetHistory
{
    /// <summary>The changes that any revision tells of, newest first; a sheet taken in from a file may have lost the older ones.</summary>
    public static IReadOnlyList<SheetChange> Of(IEnumerable<FigureSheet> revisions) =>
        [.. revisions.SelectMany(r => r.Changes).Distinct().OrderByDescending(c => c.Revision)];
}
