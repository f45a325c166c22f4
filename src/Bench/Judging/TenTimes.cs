using Witnessmark.Bench.Book;
using Witnessmark.Bench.Wording;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Judging;

/// <summary>Asks back a value that makes no sense at its point, and names the one ten times off that would.</summary>
public static class TenTimes
{
    /// <summary>The questions to ask about the values of one reading; of two marks it is their distance that has to make sense.</summary>
    /// <param name="form">How the point is read.</param>
    /// <param name="values">The values in the form's unit.</param>
    public static IEnumerable<Doubt> About(ReadingForm form, IReadOnlyList<double> values) =>
        (form.Kind == ReadingKind.Marks && values.Count == 2 ? [Math.Abs(values[0] - values[1])] : values)
            .Select(v => About(form, v))
            .OfType<Doubt>();

    /// <summary>The question to ask, or null when the value makes sense or nobody knows what would.</summary>
    /// <param name="form">How the point is read.</param>
    /// <param name="value">The value in the form's unit.</param>
    public static Doubt? About(ReadingForm form, double value)
    {
        if (form.Unit is not { } unit || MakesSense(form, value))
            return null;
        var other = new[] { value / 10, value * 10 }.Where(v => MakesSense(form, v)).Cast<double?>().FirstOrDefault();
        var said = Numerals.With(value, unit, 4);
        return other is { } better
            ? new Doubt($"{said} makes no sense here. Did you mean {Numerals.With(better, unit, 4)}?", better)
            : new Doubt(
                $"{said} makes no sense here; usual is {Usual(form, unit)}. Read again, or say that you are sure.",
                null
            );
    }

    private static bool MakesSense(ReadingForm form, double value) =>
        value >= (form.PlausibleMin ?? double.NegativeInfinity)
        && value <= (form.PlausibleMax ?? double.PositiveInfinity);

    private static Sentence Usual(ReadingForm form, Unit unit) =>
        (form.PlausibleMin, form.PlausibleMax) switch
        {
            ({ } min, { } max) => Numerals.Between(min, max, unit, 4, (least, most) => $"{least} to {most}"),
            ({ } min, null) => $"{Numerals.With(min, unit, 4)} or more",
            (_, { } max) => $"{Numerals.With(max, unit, 4)} or less",
            _ => $"anything",
        };
}

/// <summary>A question about a value.</summary>
/// <param name="Question">In one sentence or two.</param>
/// <param name="Instead">The value ten times off that would make sense, or null.</param>
public sealed record Doubt(Sentence Question, double? Instead);
