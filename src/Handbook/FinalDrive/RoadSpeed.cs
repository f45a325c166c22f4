using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.FinalDrive;

/// <summary>Road speed from engine speed through the gears.</summary>
/// <remarks>
/// <para><b>Formula.</b> final ratio = z₂/z₁; v = n/(primary · gear · final) · circumference.</para>
/// <para><b>Units.</b> Engine speed in 1/min, circumference in m, speed in km/h.</para>
/// <para><b>Source.</b> Own derivation (kinematics).</para>
/// <para><b>Valid when</b> nothing slips. Use the rolling circumference of the loaded tyre: it is smaller than π times the diameter.</para>
/// </remarks>
public static class RoadSpeed
{
    /// <summary>The speed.</summary>
    /// <param name="engineSpeed">Zero or more.</param>
    /// <param name="primaryRatio">Crankshaft turns for one of the clutch, more than zero.</param>
    /// <param name="gearRatio">Clutch turns for one of the front sprocket, more than zero.</param>
    /// <param name="frontTeeth">More than zero.</param>
    /// <param name="rearTeeth">More than zero.</param>
    /// <param name="circumference">Rolling circumference of the rear tyre.</param>
    public static Geared From(
        Frequency engineSpeed,
        double primaryRatio,
        double gearRatio,
        int frontTeeth,
        int rearTeeth,
        Length circumference
    )
    {
        var final = (double)rearTeeth / frontTeeth;
        var metresPerSecond = engineSpeed.Hertz / (primaryRatio * gearRatio * final) * circumference.Millimetres / 1000;
        return new(final, new(metresPerSecond * 3.6));
    }
}

/// <summary>Speed with the ratio behind it.</summary>
/// <param name="FinalRatio">Turns of the front sprocket for one of the wheel.</param>
/// <param name="Speed">Road speed.</param>
public readonly record struct Geared(double FinalRatio, Speed Speed);
