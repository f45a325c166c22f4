using Witnessmark.Handbook.Measuring;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Judging;

/// <summary>The verdict words.</summary>
public enum VerdictWord
{
    Unread,
    Inside,
    Close,
    Outside,
    Unproven,
}

/// <summary>The verdict on a reading, with its grounds.</summary>
/// <param name="Verdict">The word.</param>
/// <param name="Value">What was judged, in <paramref name="Unit"/>; null when nothing was measured.</param>
/// <param name="Uncertainty">Expanded (95 %), in <paramref name="Unit"/>; null when there is none to tell.</param>
/// <param name="StandardUncertainty">One standard deviation; null likewise.</param>
/// <param name="Unit">Unit of value and limit; null when nothing was measured.</param>
/// <param name="Limit">What is permitted, in <paramref name="Unit"/>; null when nothing limits it.</param>
/// <param name="Shown">The reading as people say it: <c>50 ± 1.2 mm</c>.</param>
/// <param name="Headline">The verdict as a heading: <c>Outside by 18 mm</c>.</param>
/// <param name="Grounds">One sentence: <c>50 ± 1.2 mm; the maker allows 13 to 32 mm (handbook p. 87).</c></param>
/// <param name="Working">The formula with the numbers put in and the source, three to six lines; empty when there is none.</param>
/// <param name="Series">Values round or at places, in <paramref name="Unit"/>, for drawings; empty otherwise.</param>
public sealed record Opinion(
    VerdictWord Verdict,
    double? Value,
    double? Uncertainty,
    double? StandardUncertainty,
    Unit? Unit,
    Limit? Limit,
    Sentence Shown,
    Sentence Headline,
    Sentence Grounds,
    IReadOnlyList<Sentence> Working,
    IReadOnlyList<double> Series
);
