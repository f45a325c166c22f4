using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Machines;
using Witnessmark.Bench.Wording;
using Witnessmark.Handbook.Measuring;

namespace Witnessmark.Bench.Judging;

/// <summary>
/// A fastener tightened until the wrench gave way: the setting is judged, exactly, against the figure with the maker's
/// tolerance or, where the sheet gives none, with the wrench's own.
/// </summary>
internal static class TightenJudge
{
    public static (Opinion?, Sentence?) Of(ReadingToJudge judged)
    {
        if (judged.Figure is not { Value: { } wanted } figure)
            return (
                Judge.Plain(
                    VerdictWord.Unproven,
                    Typed(judged),
                    $"No torque to judge by",
                    $"The figure sheet has no torque for this fastener."
                ),
                null
            );
        if (judged.Raw.Count != 1)
            return (null, $"One wrench setting is read here.");
        if (RawValue.In(judged.Raw[0], figure.Unit, out var why) is not { } set)
            return (null, why);
        if (judged.Instrument is not { Kind: "torque" } wrench)
            return (
                Judge.Plain(
                    VerdictWord.Unproven,
                    Typed(judged),
                    $"Unproven: with which wrench?",
                    $"A torque is proven by a torque wrench: choose the one that was used."
                ),
                null
            );
        return OutOfRange(wrench, figure.Unit.ToBase(set)) is { } cannot
            ? (Judge.Plain(VerdictWord.Unproven, Typed(judged), $"Unproven: the wrong wrench", cannot), null)
            : (Compared(figure, wanted, set, wrench.Name, wrench.PermissibleError), null);
    }

    private static Opinion Compared(Figure figure, double wanted, double set, string wrench, double error)
    {
        var limit = figure.Limit ?? new Limit(wanted * (1 - error), wanted * (1 + error));
        var low = set < limit.Min;
        var high = set > limit.Max;
        Sentence inUse = $"{Numerals.With(set, figure.Unit)} set and reached with {wrench}";
        return new(
            low || high ? VerdictWord.Outside : VerdictWord.Inside,
            set,
            null,
            null,
            figure.Unit,
            limit,
            Numerals.With(set, figure.Unit),
            low ? (Sentence)$"Too loose by {Numerals.With(wanted - set, figure.Unit)}"
                : high ? (Sentence)$"Too tight by {Numerals.With(set - wanted, figure.Unit)}"
                : (Sentence)$"Tightened",
            $"{inUse}; {Allowed.By(figure)}.",
            [
                figure.Limit is null
                    ? (Sentence)
                        $"permitted: {Numerals.Plain(limit.Min ?? 0)} to {Numerals.With(limit.Max ?? 0, figure.Unit)}, the figure ± the wrench's {Numerals.Plain(error * 100)} %"
                    : (Sentence)
                        $"permitted: {Numerals.Plain(limit.Min ?? 0)} to {Numerals.With(limit.Max ?? 0, figure.Unit)}, as the figure says",
                $"ISO 6789-1:2017, 5.1.5: permissible deviation of setting torque tools",
            ],
            []
        );
    }

    /// <summary>As it was typed.</summary>
    private static Sentence Typed(ReadingToJudge judged) => Sentence.Number(judged.Raw.FirstOrDefault() ?? "");

    private static Sentence? OutOfRange(ShopInstrument wrench, double setting) =>
        setting < wrench.Unit.ToBase(wrench.Min ?? 0) || (wrench.Max is { } max && setting > wrench.Unit.ToBase(max))
            ? (Sentence)
                $"{wrench.Name} does not reach that setting: its range is {Numerals.Plain(wrench.Min ?? 0)} to {Numerals.With(wrench.Max ?? 0, wrench.Unit)}."
            : null;
}
