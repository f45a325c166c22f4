using Witnessmark.Handbook.Measuring;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The contract of <c>reading</c>.</summary>
internal static class ReadingContract
{
    private static readonly Input<Written> Resolution = Take.Any("resolution", "smallest step that is read");
    private static readonly Input<Written> PermissibleError = Take.Any("permissibleError", "half-width of its error");
    private static readonly Input<Written[]> Values = Take.List(Take.Any("values", "repeats of one reading"))
        .OrNothing();
    private static readonly Input<Written[]> Marks = Take.List(Take.Any("marks", "the two ends on a rule"), 2)
        .OrNothing();
    private static readonly Input<(Written Resolution, Written PermissibleError)> Tool = Take.Object(
        "instrument",
        "what it was read with",
        [Resolution, PermissibleError],
        g => (g.Of(Resolution), g.Of(PermissibleError))
    );

    public static Calculation Calculation { get; } =
        new(
            "reading",
            "Measuring",
            "A reading with its uncertainty, from raw values and the instrument.",
            "JCGM 100:2008 (GUM) 4.2.3, 4.3.7, F.2.2.1",
            typeof(Measuring.Reading),
            [Values, Marks, Tool],
            [
                new("value", "unit that came in", "mean of the values, or distance of the two marks"),
                new("standardUncertainty", "unit that came in", "one standard deviation"),
                new("expandedUncertainty", "unit that came in", "two standard deviations"),
                new("repeatability", "unit that came in", "standard deviation of the repeats; two or more"),
            ],
            Read
        );

    private static Reply Read(Given given)
    {
        if (given.Has(Values) == given.Has(Marks))
            throw given.Wrong("values", given.Has(Values) ? "given beside marks" : "missing", "either values or marks");
        var raw = given.Of(given.Has(Values) ? Values : Marks);
        if (given.Has(Marks) && raw.Length != 2)
            throw given.Wrong("marks", $"{raw.Length} marks", "exactly two");
        var unit = raw[0].Unit;
        var values = raw.Select(
                (v, i) => SameUnit.InUnit(given, $"{(given.Has(Values) ? "values" : "marks")}.{i}", v, unit)
            )
            .ToArray();
        var tool = given.Of(Tool);
        var instrument = new Instrument(
            SameUnit.NotNegative(
                given,
                "instrument.resolution",
                SameUnit.Width(given, "instrument.resolution", tool.Resolution, unit)
            ),
            SameUnit.NotNegative(
                given,
                "instrument.permissibleError",
                SameUnit.Width(given, "instrument.permissibleError", tool.PermissibleError, unit)
            )
        );
        var read = given.Has(Values)
            ? Measuring.Reading.OfValues(values, instrument)
            : Measuring.Reading.OfMarks(values[0], values[1], instrument);
        return new Gives()
            .With("value", read.Value, unit.Symbol)
            .With("standardUncertainty", read.StandardUncertainty, unit.Symbol)
            .With("expandedUncertainty", read.ExpandedUncertainty, unit.Symbol)
            .With("repeatability", read.Repeatability, unit.Symbol);
    }
}
