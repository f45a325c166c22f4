using Witnessmark.Handbook.Measuring;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Brakes;

/// <summary>Whether a brake disc is thick, even and true enough, as far as the instrument can tell.</summary>
/// <remarks>
/// <para><b>Formula.</b> thinnest = least reading, u² = resolution²/12 + permissibleError²/3; variation = thickest − thinnest, with u²
/// twice because two readings make it; runout with u² once. Each is judged by its conformance probability: inside at 0.95 or more,
/// outside at 0.05 or less, else unproven.</para>
/// <para><b>Units.</b> Lengths in mm; conformance is a pure number.</para>
/// <para><b>Source.</b> JCGM 100:2008 (GUM), 4.3.7 and F.2.2.1; JCGM 106:2012, 7.2 to 7.4. That a disc is not worn past the limit
/// embossed on it: 49 CFR 570.59(b). No public source gives limits for runout and variation: all three are the user's own.</para>
/// <para><b>Valid when</b> the disc was measured clean and cold at places all round it, where the pads run; runout as the whole
/// travel of one dial gauge over a turn. Variation of few readings is too small rather than too large.</para>
/// </remarks>
public static class BrakeDisc
{
    /// <summary>Judges one disc.</summary>
    /// <param name="thicknesses">One or more readings, each above zero.</param>
    /// <param name="minimum">Smallest permitted thickness, as stamped on the disc or given by its maker.</param>
    /// <param name="runout">Whole travel of the gauge over one turn, or null when not read.</param>
    /// <param name="runoutLimit">Largest permitted runout, or null when nothing is demanded.</param>
    /// <param name="variationLimit">Largest permitted variation, or null when nothing is demanded.</param>
    /// <param name="instrument">What all of it was read with, in mm.</param>
    /// <returns>Refused as <c>tooFewReadings</c> when a single reading is to tell the variation; the thickness still holds.</returns>
    /// <exception cref="ArgumentException">There is no reading.</exception>
    public static Answer<DiscJudged> Judge(
        ReadOnlySpan<Length> thicknesses,
        Length minimum,
        Length? runout,
        Length? runoutLimit,
        Length? variationLimit,
        Instrument instrument
    )
    {
        if (thicknesses.IsEmpty)
            throw new ArgumentException("At least one reading is needed.", nameof(thicknesses));
        var (thinnest, thickest) = Ends(thicknesses);
        Length? variation = thicknesses.Length > 1 ? thickest - thinnest : null;
        var ofOne = Math.Sqrt(instrument.Variance);
        var ofTwo = Math.Sqrt(2 * instrument.Variance);
        var judged = new DiscJudged(
            thinnest,
            variation,
            Verdict.On(thinnest.Millimetres, ofOne, new(minimum.Millimetres, null)),
            AtMost(runout, runoutLimit, ofOne),
            AtMost(variation, variationLimit, ofTwo)
        );
        return variationLimit is null || variation is not null
            ? judged
            : Answer<DiscJudged>.Refuse(
                "tooFewReadings",
                $"One reading says nothing of the variation: measure the thickness at several places round the disc.",
                judged
            );
    }

    private static Judged? AtMost(Length? read, Length? limit, double u) =>
        read is { } value && limit is { } max ? Verdict.On(value.Millimetres, u, new(null, max.Millimetres)) : null;

    private static (Length Thinnest, Length Thickest) Ends(ReadOnlySpan<Length> thicknesses)
    {
        var (thinnest, thickest) = (thicknesses[0], thicknesses[0]);
        foreach (var thickness in thicknesses)
        {
            if (thickness < thinnest)
                thinnest = thickness;
            if (thickness > thickest)
                thickest = thickness;
        }
        return (thinnest, thickest);
    }
}

/// <summary>A brake disc as read, and what each reading proves.</summary>
/// <param name="Thinnest">Least thickness read.</param>
/// <param name="Variation">Thickest less thinnest, or null with one reading.</param>
/// <param name="Thickness">Of the thinnest place against the minimum.</param>
/// <param name="Runout">Null when it was not read or has no limit.</param>
/// <param name="Evenness">Of the variation; null when it is not known or has no limit.</param>
public sealed record DiscJudged(Length Thinnest, Length? Variation, Judged Thickness, Judged? Runout, Judged? Evenness);
