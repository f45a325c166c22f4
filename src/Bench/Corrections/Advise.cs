using Witnessmark.Bench.Book;
using Witnessmark.Bench.Judging;

namespace Witnessmark.Bench.Corrections;

/// <summary>What to do about a point, by the calculation that its bench book names.</summary>
public static class Advise
{
    /// <summary>The advice, or null when there is nothing to say.</summary>
    public static Advice? On(Situation situation) =>
        situation.Point.CorrectedBy switch
        {
            "chain-adjustment" => ChainAdvice.Of(situation),
            "axle-alignment" => AxleAdvice.Of(situation),
            "torque-setting" => TorqueAdvice.Of(situation),
            "oil-first-fill" => FirstFillAdvice.Of(situation),
            "oil-top-up" => TopUpAdvice.Of(situation),
            "cable-free-play" => CableAdvice.Of(situation),
            _ => situation.Point.Reading.Kind == ReadingKind.Round ? RoundAdvice.Of(situation) : null,
        };

    /// <summary>Whether anything is ever advised at a point.</summary>
    internal static bool IsAsked(Point point) =>
        point.CorrectedBy is not null || point.Reading.Kind == ReadingKind.Round;

    internal static bool IsOutside(this Situation situation) =>
        situation.Current?.Opinion.Verdict == VerdictWord.Outside;

    internal static Advice Cannot(Sentence because, params Sentence[] notes) =>
        new(null, $"The correction cannot be computed", notes, true, null, null, [], null, because);
}
