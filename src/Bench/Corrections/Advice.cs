namespace Witnessmark.Bench.Corrections;

/// <summary>What to do about a point, computed; or what was learnt there.</summary>
/// <param name="Aim"><c>To bring it to 24.4 mm</c>; null when nothing needs doing.</param>
/// <param name="Headline">The correction in the technician's own unit: <c>Both adjusters ½ turn tighter, then read again</c>.</param>
/// <param name="Notes">What it rests on and what to beware of, a sentence each.</param>
/// <param name="Needed">Whether it has to be done (the verdict is outside), or is only good to know.</param>
/// <param name="Expected">Reading to expect afterwards, in the point's unit; null when unknown.</param>
/// <param name="ExpectedUncertainty">One standard deviation of it; null when unknown.</param>
/// <param name="Working">Formula with the numbers put in and the source.</param>
/// <param name="Proposal">The correction as it can be recorded, or null.</param>
/// <param name="Refusal">Why the correction could not be computed, in a sentence; null when it could.</param>
public sealed record Advice(
    Sentence? Aim,
    Sentence Headline,
    IReadOnlyList<Sentence> Notes,
    bool Needed,
    double? Expected,
    double? ExpectedUncertainty,
    IReadOnlyList<Sentence> Working,
    Proposal? Proposal,
    Sentence? Refusal
);

/// <summary>A correction ready to be made and recorded.</summary>
/// <param name="Left">Turns of the left (or only) adjuster, tightening positive.</param>
/// <param name="Right">Turns of the right adjuster, or null when both are turned together (or there is one).</param>
/// <param name="AddLitres">Fluid to add, or null.</param>
/// <param name="Setting">Wrench setting in N·m, or null.</param>
public sealed record Proposal(double? Left, double? Right, double? AddLitres, double? Setting);
