using Witnessmark.Handbook.Measuring;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Tyres;

/// <summary>Whether the tread is deep enough for the law of the place and for the shop.</summary>
/// <remarks>
/// <para><b>Formula.</b> thinnest = least depth, u² = resolution²/12 + permissibleError²/3; minimum = the deeper of the law's and the
/// shop's; inside when the probability that the minimum is kept is 0.95 or more, outside at 0.05 or less, else unproven.</para>
/// <para><b>Units.</b> Depths in mm; Maryland's and Virginia's 1/32 in is 0.79375 mm.</para>
/// <para><b>Source.</b> The law of each row in the table of minimum tread depths, with its clause; JCGM 100:2008 (GUM), 4.3.7 and
/// F.2.2.1; JCGM 106:2012, 7.2 to 7.4.</para>
/// <para><b>Valid when</b> the depths were read in the grooves that the law means, where they are shallowest, and the table is still the law.
/// The shop's minimum can ask for more than the law, never for less.</para>
/// </remarks>
public static class TreadDepth
{
    /// <summary>Judges one tyre.</summary>
    /// <param name="depths">One or more readings, each zero or more.</param>
    /// <param name="jurisdiction">Code (ISO 3166: <c>DE</c>, <c>US-MD</c>) or name of the place whose law counts; small letters too.</param>
    /// <param name="vehicle">As which the law counts the machine.</param>
    /// <param name="gauge">What the depths were read with, in mm.</param>
    /// <param name="shopMinimum">What the shop asks for itself, or null.</param>
    /// <returns>Refused as <c>unknownJurisdiction</c>, or as <c>noDepthInLaw</c> when neither law nor shop gives a depth.</returns>
    /// <exception cref="ArgumentException">There is no reading.</exception>
    public static Answer<TreadJudged> Judge(
        ReadOnlySpan<Length> depths,
        string jurisdiction,
        RoadVehicle vehicle,
        Instrument gauge,
        Length? shopMinimum = null
    )
    {
        if (depths.IsEmpty)
            throw new ArgumentException("At least one reading is needed.", nameof(depths));
        var read = new TreadJudged(Thinnest(depths), null, false, null, null, null);
        var here = TreadLaw.Of(jurisdiction).ToArray();
        if (here.Length == 0)
            return Answer<TreadJudged>.Refuse(
                "unknownJurisdiction",
                $"The law of \"{jurisdiction}\" is not in the table. Known: {TreadLaw.Known}. Look the depth up in the law that counts where the machine is ridden.",
                read
            );
        var law = Array.Find(here, l => l.Vehicle == vehicle);
        read = read with { Clause = law?.Clause, Asks = law?.Asks };
        if (law?.Depth is null && shopMinimum is null)
            return Answer<TreadJudged>.Refuse("noDepthInLaw", WithoutDepth(here[0].Name, law), read);
        var byShop = law?.Depth is not { } legal || shopMinimum > legal;
        var minimum = (byShop ? shopMinimum : law!.Depth)!.Value;
        return read with
        {
            Minimum = minimum,
            ByShop = byShop,
            Judged = Verdict.On(read.Thinnest.Millimetres, Math.Sqrt(gauge.Variance), new(minimum.Millimetres, null)),
        };
    }

    private static Sentence WithoutDepth(string place, TreadLaw? law) =>
        law is null
            ? (Sentence)
                $"The table has no law of {place} for this kind of machine: look it up, or give the shop's own minimum."
            : (Sentence)
                $"The law of {place} gives no depth here; it asks: {law.Asks}. Look at the tyre, or give the shop's own minimum.";

    private static Length Thinnest(ReadOnlySpan<Length> depths)
    {
        var thinnest = depths[0];
        foreach (var depth in depths)
            if (depth < thinnest)
                thinnest = depth;
        return thinnest;
    }
}

/// <summary>As which the law counts a machine.</summary>
public enum RoadVehicle
{
    /// <summary>A motorcycle.</summary>
    Motorcycle,

    /// <summary>A moped, up to 50 cc; in Germany also a light motorcycle.</summary>
    Moped,
}

/// <summary>A tread as read, and what the readings prove.</summary>
/// <param name="Thinnest">Least depth read.</param>
/// <param name="Minimum">The depth that counts, or null when none does.</param>
/// <param name="ByShop">Whether that is the shop's own.</param>
/// <param name="Clause">Where the law stands, or null.</param>
/// <param name="Asks">Where the depth must be met, or what is asked in place of a depth; null without a law.</param>
/// <param name="Judged">What the thinnest place proves, or null.</param>
public sealed record TreadJudged(
    Length Thinnest,
    Length? Minimum,
    bool ByShop,
    string? Clause,
    string? Asks,
    Judged? Judged
);
