using Witnessmark.Bench.Wording;

namespace Witnessmark.Bench.Corrections;

/// <summary>What readings round something that turns show: where it is least, and whether one place differs from the rest.</summary>
internal static class RoundAdvice
{
    public static Advice? Of(Situation situation)
    {
        if (situation.Current?.Opinion is not { Unit: { } unit, Series: { Count: > 1 } series } opinion)
            return null;
        var least = series.Min();
        var tightest = series.ToList().IndexOf(least) + 1;
        var differs = opinion.Uncertainty is { } u && series.Max() - least > u;
        return new(
            null,
            differs
                ? (Sentence)$"More slack in one place than in another: tightest at reading {tightest}"
                : (Sentence)$"The same all round, as far as the rule can tell",
            differs
                ?
                [
                    $"{Numerals.With(least, unit, 1)} there, {Numerals.With(series.Max(), unit, 1)} at the loosest: a tight place is beginning, or a sprocket runs out.",
                    $"Turn the wheel to the tightest place before the slack is set: the least slack must meet the limit.",
                ]
                : [],
            false,
            null,
            null,
            [],
            null,
            null
        );
    }
}
