using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Judging;

namespace Witnessmark.Bench.AtThePoint;

/// <summary>The five steps of the loop at a point, in order.</summary>
public enum LoopStep
{
    Figure,
    Reading,
    Verdict,
    Correction,
    Mark,
}

/// <summary>How a step of the loop stands.</summary>
public enum LoopStanding
{
    ToCome,
    Now,
    Done,

    /// <summary>The verdict asks for none.</summary>
    NotNeeded,
}

/// <summary>What somebody is at, at a point: more than the entries can tell.</summary>
public enum AtPoint
{
    /// <summary>Looking, nothing typed.</summary>
    Looking,

    /// <summary>A reading is half typed.</summary>
    TypingReading,

    /// <summary>The correction that was made is being typed.</summary>
    TypingCorrection,

    /// <summary>A figure is being given.</summary>
    GivingFigure,
}

/// <summary>Where the work at a point stands in the loop figure, reading, verdict, correction, mark.</summary>
/// <param name="Now">The step that is to be done now; null: marked or left, the loop is closed.</param>
/// <param name="Again">Whether the reading is one more of what was read before.</param>
public sealed record PointLoop(LoopStep? Now, bool Again)
{
    private LoopStanding Correction { get; init; }

    /// <summary>How one step stands.</summary>
    public LoopStanding Of(LoopStep step) =>
        step == Now ? LoopStanding.Now
        : step == LoopStep.Correction ? Correction
        : Now is null || step < Now ? LoopStanding.Done
        : LoopStanding.ToCome;

    /// <summary>Where the work stands, by the point's state and by what somebody is at.</summary>
    public static PointLoop At(PointState point, AtPoint at = AtPoint.Looking)
    {
        var again = point.Current is null && point.Readings.Count > 0;
        var now = Step(point, at);
        return new(now, again) { Correction = OfCorrection(point, now) };
    }

    private static LoopStep? Step(PointState point, AtPoint at) =>
        at switch
        {
            AtPoint.TypingReading => LoopStep.Reading,
            AtPoint.TypingCorrection => LoopStep.Correction,
            AtPoint.GivingFigure => LoopStep.Figure,
            _ => Step(point),
        };

    private static LoopStep? Step(PointState point) =>
        point switch
        {
            { Marked: not null } or { Left: not null } => null,
            { LacksFigure: true } => LoopStep.Figure,
            { Current: null, Readings.Count: 0, Figure: not null } => LoopStep.Figure,
            { Current: null } => LoopStep.Reading,
            { Current.Opinion.Verdict: VerdictWord.Outside } => LoopStep.Correction,
            { CanBeMarked: true } => LoopStep.Mark,
            _ => LoopStep.Verdict,
        };

    private static LoopStanding OfCorrection(PointState point, LoopStep? now) =>
        point.Corrections.Count > 0 ? LoopStanding.Done
        : now is null or LoopStep.Mark ? LoopStanding.NotNeeded
        : LoopStanding.ToCome;
}
