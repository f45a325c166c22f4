using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Tyres;

/// <summary>The pressure that a tyre read at one temperature shows at another.</summary>
/// <remarks>
/// <para><b>Formula.</b> (p₂ + pₐ) = (p₁ + pₐ)·T₂/T₁: at constant volume the absolute pressure goes with the absolute temperature.</para>
/// <para><b>Units.</b> Gauge pressures and the air outside in kPa; T in kelvin, °C + 273.15.</para>
/// <para><b>Source.</b> Gay-Lussac's law. Standard atmosphere 101.325 kPa: ISO 2533:1975.</para>
/// <para><b>Valid when</b> no air was let in or out and the air in the tyre has the temperature given. The stretch of the
/// tyre and the water in its air are left out. Gauge pressure in place of absolute finds too small a change.</para>
/// </remarks>
public static class TyrePressure
{
    /// <summary>The air outside when nobody says otherwise: the standard atmosphere at sea level, ISO 2533:1975.</summary>
    public static readonly Pressure StandardAtmosphere = new(101.325);

    /// <summary>0 °C in kelvin.</summary>
    public const double FreezingPoint = 273.15;

    /// <summary>The gauge pressure at another temperature; below zero where the air outside would press the tyre in.</summary>
    /// <param name="gauge">Pressure read, above that of the air outside.</param>
    /// <param name="at">Temperature of the tyre when it was read, above absolute zero.</param>
    /// <param name="wantedAt">Temperature asked about, above absolute zero.</param>
    /// <param name="atmosphere">Pressure of the air outside, more than zero.</param>
    public static Pressure At(Pressure gauge, Temperature at, Temperature wantedAt, Pressure atmosphere) =>
        (gauge + atmosphere) * (Kelvin(wantedAt) / Kelvin(at)) - atmosphere;

    private static double Kelvin(Temperature temperature) => temperature.DegreesCelsius + FreezingPoint;
}
