using Witnessmark.Handbook.Measuring;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Electrics;

/// <summary>Voltage lost between two places of a circuit under load, the resistance of the path, and whether it is permitted.</summary>
/// <remarks>
/// <para><b>Formula.</b> drop = voltage at the source − voltage at the load, with deviation √2·u; resistance = drop/current. The verdict is that of
/// <see cref="Verdict"/> on the drop against its largest permitted value.</para>
/// <para><b>Units.</b> V, A, Ω; u is one standard deviation of one voltage reading.</para>
/// <para><b>Source.</b> Ohm's law; JCGM 100:2008 (GUM) 5.1.2 for the difference of two readings; JCGM 106:2012, 7.2 to 7.4, for the verdict.</para>
/// <para><b>Valid when</b> both readings are taken against the same place (the battery's negative post) with the consumer on and its current steady;
/// the errors of the two readings are taken as independent. A zero current shows no drop, however bad the path.</para>
/// </remarks>
public static class VoltageDrop
{
    // Two readings in decimals leave a difference in decimals: what lies behind this digit is noise of binary fractions.
    private const int Decimals = 12;
    private const double NotSwapped = 2; // deviations, the expanded uncertainty of GUM 6.2.1

    /// <summary>The drop and what it proves.</summary>
    /// <param name="atSource">At the end that feeds, zero or more.</param>
    /// <param name="atLoad">At the end that is fed, zero or more.</param>
    /// <param name="meterUncertainty">u, zero or more.</param>
    /// <param name="current">Through the path, more than zero, or null.</param>
    /// <param name="largest">Largest permitted drop, zero or more, or null.</param>
    /// <param name="confidence">Between 0.5 and 1, both excluded.</param>
    /// <returns>Refused as <c>wrongWayRound</c> when the fed end reads higher by more than the meter explains.</returns>
    public static Answer<LostVoltage> Between(
        Voltage atSource,
        Voltage atLoad,
        Voltage meterUncertainty,
        Current? current,
        Voltage? largest,
        double confidence = Verdict.UsualConfidence
    )
    {
        var drop = Math.Round(atSource.Volts - atLoad.Volts, Decimals);
        var u = Math.Sqrt(2) * meterUncertainty.Volts;
        if (drop < -NotSwapped * u)
            return Answer<LostVoltage>.Refuse(
                "wrongWayRound",
                $"The fed end reads higher than the end that feeds it, by more than the meter explains: check which reading is which, and take both under the same load.",
                new(new(drop), new(u), null, null, null)
            );
        return new LostVoltage(
            new(drop),
            new(u),
            current is { } i ? new Resistance(drop / i.Amperes) : null,
            current is { } through ? new Resistance(u / through.Amperes) : null,
            largest is { } max ? Verdict.On(drop, u, new Limit(null, max.Volts), confidence) : null
        );
    }
}

/// <summary>What is lost on a path.</summary>
/// <param name="Drop">Below zero, within the meter's uncertainty, means none found.</param>
/// <param name="StandardUncertainty">One standard deviation of the drop.</param>
/// <param name="Resistance">Of the path, where the current is known.</param>
/// <param name="ResistanceUncertainty">One standard deviation of it, the current taken as exact.</param>
/// <param name="Judged">In V, where a limit is given.</param>
public sealed record LostVoltage(
    Voltage Drop,
    Voltage StandardUncertainty,
    Resistance? Resistance,
    Resistance? ResistanceUncertainty,
    Judged? Judged
);
