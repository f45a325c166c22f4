using System.Globalization;
using Witnessmark.Bench.Judging;
using Witnessmark.Bench.Wording;
using Witnessmark.Handbook;
using Witnessmark.Handbook.Fluids;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Inclining;

/// <summary>An inclination of the machine or of its lamp: what the phone showed there less what it shows on a level.</summary>
/// <remarks>
/// <para><b>Formula.</b> θ = shown − zero, u² = u_shown² + u_zero². In percent 100·tan θ, u·(π/180)·100/cos² θ.</para>
/// <para><b>Source.</b> JCGM 100:2008 (GUM), 5.1.2. Drop over distance is the tangent: <c>headlamp-aim</c>.</para>
/// </remarks>
/// <param name="Shown">What it showed.</param>
/// <param name="Zero">Its own error.</param>
public sealed record Inclination(Laid Shown, PhoneZero Zero)
{
    private static Unit Degree => UnitTable.Named("deg");

    private static Unit Percent => UnitTable.Named("%");

    /// <summary>Degrees, the phone's upper end higher positive.</summary>
    public double Degrees => Shown.Degrees - Zero.Degrees;

    /// <summary>One standard deviation of it.</summary>
    public double Uncertainty => Math.Sqrt(Shown.Uncertainty * Shown.Uncertainty + Zero.Uncertainty * Zero.Uncertainty);

    /// <summary>As people say it: <c>0.4 ± 0.14°</c>.</summary>
    public Sentence InWords => $"{Numerals.Plain(Degrees, Decimals)} ± {Numerals.Plain(2 * Uncertainty, Decimals)}°";

    /// <summary>As the aim of a lamp, down positive, with the upper end of the phone forward.</summary>
    public Written Aim => new(-100 * Math.Tan(Radians), Percent);

    /// <summary>What the reading says of itself.</summary>
    public DeviceReading Device
    {
        get
        {
            var cos = Math.Cos(Radians);
            return new(DeviceSense.Inclination, new(100 * Uncertainty * Math.PI / 180 / (cos * cos), Percent));
        }
    }

    /// <summary>The aim as people say it: <c>1.2 ± 0.3 %</c>.</summary>
    public Sentence AimInWords => Numerals.WithUncertainty(Aim.Value, 2 * Device.Uncertainty.Value, Percent);

    /// <summary>The digits that go into the box.</summary>
    public string Digits => Math.Round(Aim.Value, 2).ToString("0.##", CultureInfo.InvariantCulture);

    /// <summary>What this lean does to a level that is read beside the middle of the sump.</summary>
    /// <param name="offset">From the middle of the oil to the stick, positive to the left.</param>
    /// <param name="marksApart">From the low mark to the high one, more than zero.</param>
    /// <remarks>With the phone's upper end on the machine's right, a positive angle lowers its left.</remarks>
    public Answer<TiltedLevel> OnLevel(Length offset, Length marksApart) =>
        OilTilt.Of(new(Radians), offset, marksApart);

    /// <summary>The formula with the numbers put in.</summary>
    public IReadOnlyList<Sentence> Working =>
        [
            $"θ = {N(Shown.Degrees)}° − {N(Zero.Degrees)}° = {N(Degrees)}°: what it showed less its own error",
            $"u = √({N(Shown.Uncertainty)}² + {N(Zero.Uncertainty)}²) = {N(Uncertainty)}°, U = 2u = {N(2 * Uncertainty)}°",
            $"its own error: half the sum of the two layings, turned end for end; the surface itself leaned {N(Zero.Surface)}°",
        ];

    /// <summary>The same with the conversion to percent.</summary>
    public IReadOnlyList<Sentence> WorkingOfAim =>
        [
            .. Working,
            $"aim = −100 · tan θ = {N(Aim.Value)} %, U = {N(2 * Device.Uncertainty.Value)} %; down is positive",
        ];

    private double Radians => Degree.ToBase(Degrees);

    private int Decimals => Numerals.DecimalsFor(2 * Uncertainty);

    private static Sentence N(double value) => Numerals.Plain(value, 3);
}
