using Witnessmark.Bench.Book;
using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Wording;
using Witnessmark.Handbook.Measuring;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Judging;

/// <summary>Values, marks on a rule, levels, places and readings round: measured and held against a limit.</summary>
internal static class MeasuredJudge
{
    /// <summary>The point at which the distance ridden is read: it may not be less than on record.</summary>
    internal const string Distance = "distance";

    public static (Opinion?, Sentence?) Of(ReadingToJudge judged)
    {
        var figure = judged.Point.Id == Distance ? FromRecord(judged) : judged.Figure;
        var unit = figure?.Unit ?? judged.Point.Reading.Unit ?? UnitTable.Named("1");
        if (Values(judged, unit, out var why) is not { } values)
            return (null, why);
        if (judged.Instrument is { } other && other.Unit.Dimension != unit.Dimension)
            return (null, $"{other.Name} measures in {other.Unit}, which cannot be read here.");
        var tool = judged.Instrument is { } instrument ? InstrumentIn.Unit(instrument, unit) : (Instrument?)null;
        var (measured, place) = Measure(judged.Point.Reading, values, tool ?? default, figure?.Limit);
        if (figure is not { Limit: { } limit })
            return (WithoutFigure(judged, measured, unit, values), null);
        if (tool is null)
            return (NoInstrument(measured, unit, limit, values), null);
        return (Said(judged, figure, unit, limit, measured, place, values), null);
    }

    private static Figure? FromRecord(ReadingToJudge judged) =>
        judged.Machine.LastDistanceKilometres is { } last
            ? new(
                "machine.distance",
                FigureKind.Min,
                UnitTable.Named("km"),
                last,
                null,
                null,
                "",
                null,
                null,
                new(OriginKind.Shop, LastVisit)
            )
            : null;

    // said wherever the origin is; it stands in the figure as a plain word
    private static Sentence LastVisit => $"last visit";

    private static double[]? Values(ReadingToJudge judged, Unit unit, out Sentence? why)
    {
        why = Wanted(judged.Point.Reading, judged.Raw.Count);
        if (why is not null)
            return null;
        var values = new double[judged.Raw.Count];
        for (var i = 0; i < values.Length; i++)
        {
            if (RawValue.In(judged.Raw[i], unit, out why) is not { } value)
                return null;
            values[i] = value;
        }
        return values;
    }

    private static Sentence? Wanted(ReadingForm form, int count) =>
        form.Kind switch
        {
            ReadingKind.Marks when count != 2 => $"{count} marks. Allowed: the two ends on the rule.",
            ReadingKind.Places when count != form.Places.Count =>
                $"{count} values for {form.Places.Count} places ({Sentence.List(form.Places)}).",
            ReadingKind.Round when count != form.Count => $"{count} readings round. Allowed: {form.Count}.",
            ReadingKind.Level when count != 1 => $"{count} levels. Allowed: one.",
            _ when count == 0 => $"No value.",
            _ => null,
        };

    /// <summary>What is judged, and at which place it was when places were read.</summary>
    private static (Measured Measured, int? Place) Measure(
        ReadingForm form,
        double[] values,
        Instrument tool,
        Limit? limit
    )
    {
        if (form.Kind == ReadingKind.Marks)
            return (Reading.OfMarks(values[0], values[1], tool), null);
        if (form.Kind == ReadingKind.Round)
            return (Reading.OfMarks(values.Max(), values.Min(), tool), null);
        if (form.Kind != ReadingKind.Places)
            return (Reading.OfValues(values, tool), null);
        var worst = Enumerable.Range(0, values.Length).MinBy(i => Room(values[i], limit));
        return (Reading.OfValues([values[worst]], tool), worst);
    }

    // with no limit the thinnest place is the one to tell
    private static double Room(double value, Limit? limit) =>
        limit is not { } l
            ? value
            : Math.Min(value - (l.Min ?? double.NegativeInfinity), (l.Max ?? double.PositiveInfinity) - value);

    private static Opinion WithoutFigure(ReadingToJudge judged, Measured measured, Unit unit, double[] values)
    {
        var shown = Numerals.WithUncertainty(measured.Value, measured.ExpandedUncertainty, unit);
        return new(
            judged.Point.Safety ? VerdictWord.Unproven : VerdictWord.Inside,
            measured.Value,
            measured.ExpandedUncertainty,
            measured.StandardUncertainty,
            unit,
            null,
            shown,
            judged.Point.Safety ? (Sentence)$"Unproven: no figure to judge by" : (Sentence)$"Recorded",
            judged.Point.Safety
                ? (Sentence)$"{shown}; the figure sheet has no limit for this."
                : (Sentence)$"{shown}; nothing limits it.",
            [],
            values
        );
    }

    private static Opinion NoInstrument(Measured measured, Unit unit, Limit limit, double[] values) =>
        new(
            VerdictWord.Unproven,
            measured.Value,
            null,
            null,
            unit,
            limit,
            Numerals.With(measured.Value, unit, 4),
            $"Unproven: read with what?",
            $"Without its instrument a reading proves nothing: choose it.",
            [],
            values
        );

    private static Opinion Said(
        ReadingToJudge judged,
        Figure figure,
        Unit unit,
        Limit limit,
        Measured measured,
        int? place,
        double[] values
    )
    {
        var found = Verdict.On(measured.Value, measured.StandardUncertainty, limit);
        var guard = Math.Max(found.AcceptMin - limit.Min ?? 0, limit.Max - found.AcceptMax ?? 0);
        var shown = Numerals.WithUncertainty(measured.Value, measured.ExpandedUncertainty, unit);
        Sentence at = place is { } p ? (Sentence)$" {judged.Point.Reading.Places[p]}" : Sentence.Empty;
        return new(
            Word(found, guard),
            measured.Value,
            measured.ExpandedUncertainty,
            measured.StandardUncertainty,
            unit,
            limit,
            $"{shown}{at}",
            Headline(found, guard, unit, judged, at),
            $"{shown}{at}; {Allowed.By(figure)}.",
            MeasuredWorking.Of(judged, unit, limit, measured, found, values),
            values
        );
    }

    /// <summary>Close: proven inside, but nearer to the limit than twice the guard band, so that the next reading may not prove it.</summary>
    private static VerdictWord Word(Judged found, double guard) =>
        found.Call switch
        {
            Call.Outside => VerdictWord.Outside,
            Call.Unproven => VerdictWord.Unproven,
            _ => found.Margin < 2 * guard ? VerdictWord.Close : VerdictWord.Inside,
        };

    private static Sentence Headline(Judged found, double guard, Unit unit, ReadingToJudge judged, Sentence at) =>
        Word(found, guard) switch
        {
            VerdictWord.Outside => $"Outside by {Numerals.Apart(-found.Margin, unit, Digits(judged))}{at}",
            VerdictWord.Unproven => $"Unproven: {judged.Instrument!.Name} cannot tell",
            VerdictWord.Close => $"Close: {Numerals.Apart(found.Margin, unit, Digits(judged))} from the limit{at}",
            _ => $"Inside",
        };

    private static int Digits(ReadingToJudge judged) => Math.Max(judged.Instrument?.Decimals ?? 2, 1);
}
