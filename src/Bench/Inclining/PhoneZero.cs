using Witnessmark.Bench.Wording;
using Witnessmark.Handbook;

namespace Witnessmark.Bench.Inclining;

/// <summary>What a phone shows on a surface that is level: its own error, found by laying it down twice.</summary>
/// <remarks>
/// <para><b>Formula.</b> Laid once it shows t + z, turned by 180° on the same spot −t + z, so that z = (a + b)/2 whatever the surface's own
/// inclination t = (a − b)/2. u_z² = (u_a² + u_b²)/4.</para>
/// <para><b>Source.</b> Reversal of a level: Evans, Hocken and Estler, "Self-calibration: reversal, redundancy, error separation, and 'absolute
/// testing'", CIRP Annals 45 (1996) 617 (from memory). JCGM 100:2008 (GUM), 5.1.2.</para>
/// <para><b>Valid when</b> it lies on the same spot both times, turned end for end. A lens that stands out tilts it, and goes out with the rest.</para>
/// </remarks>
/// <param name="Degrees">What to take off.</param>
/// <param name="Uncertainty">One standard deviation.</param>
/// <param name="Surface">The inclination of the surface itself.</param>
public sealed record PhoneZero(double Degrees, double Uncertainty, double Surface)
{
    /// <summary>A phone that is farther off was not turned on the spot, own.</summary>
    private const double Most = 10;

    /// <summary>From the two layings.</summary>
    public static Answer<PhoneZero> Of(Laid first, Laid turned)
    {
        var zero = (first.Degrees + turned.Degrees) / 2;
        return Math.Abs(zero) > Most
            ? Answer<PhoneZero>.Refuse(
                "notTurned",
                $"That would be {Numerals.Plain(Math.Abs(zero), 1)}° of its own error, which no phone has: lay it flat, and turn it end for end on the same spot."
            )
            : new PhoneZero(
                zero,
                Math.Sqrt(first.Uncertainty * first.Uncertainty + turned.Uncertainty * turned.Uncertainty) / 2,
                (first.Degrees - turned.Degrees) / 2
            );
    }
}
