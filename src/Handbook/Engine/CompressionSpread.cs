using Witnessmark.Handbook.Measuring;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Engine;

/// <summary>How far the compression readings of an engine's cylinders lie apart, and whether that is permitted.</summary>
/// <remarks>
/// <para><b>Formula.</b> spread = (highest − lowest) / highest. Inside when the spread is within its limit and, where a smallest
/// pressure is given, the lowest reading reaches it; else outside.</para>
/// <para><b>Units.</b> Gauge pressures; the spread a percentage of the highest.</para>
/// <para><b>Source.</b> Arithmetic. That cylinders are compared in per cent of the highest is common practice, no source; the limits
/// are the maker's.</para>
/// <para><b>Valid when</b> all cylinders were cranked alike: same gauge, throttle open, battery charged, engine warm as the maker says.</para>
/// </remarks>
public static class CompressionSpread
{
    // A spread written as 15 % must hold for readings exactly 15 % apart.
    private const double Rounding = 1e-12;

    /// <summary>Judges the readings of one engine.</summary>
    /// <param name="pressures">One or more, one a cylinder, 0 or more.</param>
    /// <param name="smallest">Smallest permitted pressure, or null.</param>
    /// <param name="spreadLimit">Largest permitted spread, 0 to 1.</param>
    /// <returns>Refused as <c>noPressure</c> when no cylinder reads above zero.</returns>
    /// <exception cref="ArgumentException">There is no reading.</exception>
    public static Answer<Spread> Of(ReadOnlySpan<Pressure> pressures, Pressure? smallest, Ratio spreadLimit)
    {
        if (pressures.IsEmpty)
            throw new ArgumentException("At least one pressure is needed.", nameof(pressures));
        var lowest = pressures[0];
        var highest = pressures[0];
        foreach (var pressure in pressures)
        {
            lowest = pressure < lowest ? pressure : lowest;
            highest = pressure > highest ? pressure : highest;
        }
        if (highest.Kilopascals <= 0)
            return Answer<Spread>.Refuse(
                "noPressure",
                $"No cylinder built up any pressure: check the gauge and its seal, the throttle and the cranking, and read again."
            );
        var apart = highest - lowest;
        var kept =
            apart.Kilopascals <= (spreadLimit.Value + Rounding) * highest.Kilopascals
            && (smallest is not { } min || lowest >= min);
        return new Spread(lowest, new Ratio(apart / highest), kept ? Call.Inside : Call.Outside);
    }
}

/// <summary>How far the cylinders lie apart.</summary>
/// <param name="Lowest">The lowest reading.</param>
/// <param name="OfHighest">The spread as a share of the highest.</param>
/// <param name="Call">Inside or outside; readings are taken as exact.</param>
public sealed record Spread(Pressure Lowest, Ratio OfHighest, Call Call);
