using Witnessmark.Bench.Book;
using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Judging;
using Witnessmark.Bench.Machines;
using Witnessmark.Handbook.FinalDrive;
using Witnessmark.Handbook.Measuring;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Kit;

/// <summary>How far an instrument can decide at a point.</summary>
internal enum Decision
{
    /// <summary>A reading in the best place would be proven inside.</summary>
    Decides,

    /// <summary>Three readings a side would be; one is not.</summary>
    WithRepeats,

    /// <summary>No reading whatever could be proven inside.</summary>
    Never,
}

/// <summary>Whether an instrument is fine enough for the verdict that a point asks for, before anything was read.</summary>
/// <remarks>
/// <para><b>Formula.</b> The reading that is easiest to prove is judged: the middle of a range; of a lower limit alone the largest
/// plausible value, of an upper one the smallest. The instrument decides when that reading's conformance p ≥ 0.95, so for a range of
/// width T when 2·Φ(T/2u) − 1 ≥ 0.95, T ≥ 3.92·u. Of sides: when 1.96·√2·u ≤ tolerance, or else three equal readings a side are inside.</para>
/// <para><b>Units.</b> Those of the figure; u is one standard deviation of a reading with this instrument.</para>
/// <para><b>Source.</b> JCGM 106:2012, 7.2 to 7.4 (conformance probability), 8.3.2 (guarded acceptance); the handbook's verdict and
/// axle-difference.</para>
/// <para><b>Valid when</b> only whether it can be decided at all is asked. Nearer to a limit than its guard band no instrument decides.</para>
/// </remarks>
internal static class Decides
{
    public static Decision At(Point point, Figure figure, ShopInstrument instrument)
    {
        if (point.Reading.Kind == ReadingKind.Sides)
            return Sides(figure, instrument);
        if (figure.Limit is not { } limit || Best(point.Reading, figure.Unit, limit) is not { } best)
            return Decision.Decides;
        return Verdict.On(best, Uncertainty(point.Reading, figure.Unit, instrument), limit).Call == Call.Inside
            ? Decision.Decides
            : Decision.Never;
    }

    /// <summary>One standard deviation of one reading, in the figure's unit.</summary>
    public static double Uncertainty(ReadingForm form, Unit unit, ShopInstrument instrument)
    {
        var tool = InstrumentIn.Unit(instrument, unit);
        return form.Kind is ReadingKind.Marks or ReadingKind.Round
            ? Reading.OfMarks(0, 0, tool).StandardUncertainty
            : Reading.OfValues([0], tool).StandardUncertainty;
    }

    /// <summary>The value that is easiest to prove inside; null when one further from the limit can always be thought of.</summary>
    private static double? Best(ReadingForm form, Unit unit, Limit limit)
    {
        if (limit is { Min: { } min, Max: { } max })
            return (min + max) / 2;
        // what is plausible round a chain are its readings, not their spread; no spread and no distance is below nothing
        if (limit.Min is null && form.Kind is ReadingKind.Round or ReadingKind.Marks)
            return 0;
        var far =
            form.Kind == ReadingKind.Round ? null
            : limit.Min is null ? form.PlausibleMin
            : form.PlausibleMax;
        return far is { } plausible && form.Unit is { } own && own.Dimension == unit.Dimension
            ? unit.FromBase(own.ToBase(plausible))
            : null;
    }

    private static Decision Sides(Figure figure, ShopInstrument instrument)
    {
        if (figure.Max is not { } most || figure.Unit.Dimension != Dimension.Length)
            return Decision.Decides;
        var tolerance = new Length(figure.Unit.ToBase(most));
        var u = Math.Sqrt(InstrumentIn.Unit(instrument, UnitTable.Named("mm")).Variance);
        var again = instrument.Replacing * instrument.Unit.Factor;
        Length[] one = [default];
        Length[] three = [default, default, default];
        return AxleDifference.Of(one, one, new(Math.Sqrt(u * u + again * again)), tolerance).Call == Call.Inside
                ? Decision.Decides
            : AxleDifference.Of(three, three, new(u), tolerance).Call == Call.Inside ? Decision.WithRepeats
            : Decision.Never;
    }
}
