using System.Globalization;
using Witnessmark.Bench.Book;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Judging;
using Witnessmark.Handbook.Measuring;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Paper.Drawings;

/// <summary>What the rule shows of one point, all numbers in one unit.</summary>
/// <param name="Label">In one sentence.</param>
/// <param name="Limit">The permitted band, or null when nothing limits it.</param>
/// <param name="Now">The reading that counts, or null.</param>
/// <param name="Earlier">Readings of this visit before it, in order.</param>
/// <param name="Expected">What a correction should bring, or null.</param>
/// <param name="Level">Whether it is a level between two marks, 0 and 1.</param>
public sealed record RuleView(
    Sentence Label,
    Limit? Limit,
    Needle? Now,
    IReadOnlyList<double> Earlier,
    Needle? Expected,
    bool Level
)
{
    /// <summary>Beyond this no rule of a workshop reaches; such numbers are not drawn.</summary>
    public const double Reach = 1e9;

    /// <summary>The rule of a point; null when there is nothing on it that a rule could show.</summary>
    public static RuleView? Of(PointState state)
    {
        if (state.Point.Reading.Kind is ReadingKind.Seen or ReadingKind.Done or ReadingKind.Vin or ReadingKind.TyreDate)
            return null;
        var (limit, unit) = LimitOf(state);
        var now = state.Current is { } current ? NeedleOf(current, unit) : null;
        var earlier = state
            .Readings.Where(r => r != state.Current)
            .Select(r => r.Opinion.InUnit(unit))
            .OfType<double>();
        var expected = state.Advice is { Expected: { } value } advice
            ? new Needle(value, 2 * advice.ExpectedUncertainty, Spoken.Of(value), VerdictWord.Unread)
            : null;
        var label = LabelOf(state, limit, unit, expected);
        var view = new RuleView(
            label,
            limit,
            now,
            [.. earlier],
            expected,
            state.Point.Reading.Kind is ReadingKind.Level
        );
        return view.Numbers.Any() && view.Numbers.All(n => Math.Abs(n) <= Reach) ? view : null;
    }

    /// <summary>Every number that must be visible.</summary>
    public IEnumerable<double> Numbers =>
        ((IEnumerable<double?>)[Limit?.Min, Limit?.Max, .. Ends(Now), .. Ends(Expected)])
            .OfType<double>()
            .Concat(Earlier);

    private static IEnumerable<double?> Ends(Needle? needle) =>
        needle is null ? [] : [needle.Value - (needle.Uncertainty ?? 0), needle.Value + (needle.Uncertainty ?? 0)];

    private static (Limit?, Unit?) LimitOf(PointState state)
    {
        var judged = state.Current ?? state.Readings.LastOrDefault();
        return judged is { Opinion: { Unit: { } unit } opinion } ? (opinion.Limit, unit)
            : state.Figure is { } figure ? (figure.Limit, figure.Unit)
            : (null, null);
    }

    private static Needle? NeedleOf(ReadingTaken reading, Unit? unit)
    {
        var opinion = reading.Opinion;
        return opinion.InUnit(unit) is { } value
            ? new Needle(value, opinion.Uncertainty, opinion.Digits(value), opinion.Verdict)
            : null;
    }

    private static Sentence LabelOf(PointState state, Limit? limit, Unit? unit, Needle? expected)
    {
        var symbol = unit?.Symbol ?? "";
        var last = state.Readings.LastOrDefault()?.Opinion;
        List<Sentence> parts =
        [
            state.Current is { } now ? (Sentence)$"{state.Point.Title} {now.Opinion.Shown}"
            : last is null ? (Sentence)$"{state.Point.Title} not read"
            : (Sentence)$"{state.Point.Title} to be read again, last {last.Shown}",
        ];
        if (limit is { } l)
            parts.Add($"limit {Spoken.Of(l, symbol)}");
        if (state.Current is { } judged)
            parts.Add(Spoken.Of(judged.Opinion.Verdict));
        if (state.Current is not null && state.Found is { } found && found != state.Current)
            parts.Add($"found at {found.Opinion.Shown}");
        if (expected is not null)
            parts.Add($"{Spoken.With(expected.Value, symbol)} expected after the correction");
        return Sentence.List(parts);
    }
}

/// <summary>A needle on the rule.</summary>
/// <param name="Value">Where it stands.</param>
/// <param name="Uncertainty">Half its width, or null when there is none to tell.</param>
/// <param name="Number">As written over it.</param>
/// <param name="Verdict">What it proves; unread for one that is only expected.</param>
public sealed record Needle(double Value, double? Uncertainty, Sentence Number, VerdictWord Verdict);

internal static class OpinionNumbers
{
    /// <summary>The judged value in a unit, or null when there is none that it can be given in.</summary>
    public static double? InUnit(this Opinion opinion, Unit? unit) =>
        opinion is not { Value: { } value, Unit: { } own } || unit is null ? null
        : own == unit ? value
        : own.Dimension == unit.Dimension ? unit.FromBase(own.ToBase(value))
        : null;

    /// <summary>The digits as shown to people (4.60 keeps its zero), where they are that value; else the value.</summary>
    public static Sentence Digits(this Opinion opinion, double value)
    {
        var shown = opinion.Shown.ToString().Split(' ')[0];
        var same =
            double.TryParse(shown, NumberStyles.Float, CultureInfo.InvariantCulture, out var read)
            && Math.Abs(read - value) <= 0.05 * Math.Max(Math.Abs(value), opinion.Uncertainty ?? 0);
        return same ? Sentence.Number(shown) : Spoken.Of(Math.Round(value, 3));
    }
}
