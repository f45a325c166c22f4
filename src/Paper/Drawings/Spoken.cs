using System.Globalization;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Judging;
using Witnessmark.Handbook.Measuring;

namespace Witnessmark.Paper.Drawings;

/// <summary>States, limits and numbers in words, for labels that are read aloud.</summary>
public static class Spoken
{
    /// <summary>The word of a stripe.</summary>
    public static Sentence Of(Stripe stripe) =>
        stripe switch
        {
            Stripe.Unread => $"not read",
            Stripe.Inside => $"inside but not marked",
            Stripe.Close => $"close but not marked",
            Stripe.Outside => $"outside",
            Stripe.Unproven => $"unproven",
            Stripe.Marked => $"marked",
            Stripe.MarkedClose => $"marked though close to its limit",
            Stripe.Again => $"read again",
            Stripe.Left => $"left as it is",
            _ => throw new ArgumentOutOfRangeException(nameof(stripe), stripe, $"A state without a word."),
        };

    /// <summary>The word of a verdict.</summary>
    public static Sentence Of(VerdictWord verdict) =>
        verdict switch
        {
            VerdictWord.Unread => $"not read",
            VerdictWord.Inside => $"inside",
            VerdictWord.Close => $"close",
            VerdictWord.Outside => $"outside",
            VerdictWord.Unproven => $"unproven",
            _ => throw new ArgumentOutOfRangeException(nameof(verdict), verdict, $"A verdict without a word."),
        };

    /// <summary>What a limit permits: <c>13 to 32 mm</c>, <c>at least 1.5 mm</c>.</summary>
    public static Sentence Of(Limit limit, string unit) =>
        limit switch
        {
            { Min: { } min, Max: { } max } => $"{Of(min)} to {With(max, unit)}",
            { Min: { } min } => $"at least {With(min, unit)}",
            { Max: { } max } => $"at most {With(max, unit)}",
            _ => $"none",
        };

    /// <summary>A number with its unit; a pure number has none.</summary>
    public static Sentence With(double value, string unit) =>
        unit is "" or "1" ? Of(value) : (Sentence)$"{Of(value)} {unit}";

    /// <summary>A number as people write it, at most six decimals.</summary>
    public static Sentence Of(double value) =>
        Sentence.Number((value == 0 ? 0 : value).ToString("0.######", CultureInfo.InvariantCulture));
}
