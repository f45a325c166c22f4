using Witnessmark.Bench.Wording;
using Witnessmark.Handbook;

namespace Witnessmark.Bench.Inclining;

/// <summary>How a phone that was laid down is inclined along its long side.</summary>
/// <remarks>
/// <para><b>Formula.</b> Angle = arcsin(sin β): how far the upper end stands above the lower one. u² = s² + resolution²/12 with s the standard
/// deviation of what was felt in a second; it is not divided by the number of values, because they follow each other too closely to be
/// independent.</para>
/// <para><b>Units.</b> Degrees, the upper end higher positive.</para>
/// <para><b>Source.</b> W3C, Device Orientation and Motion, worked example of the rotation matrix (from memory): the long side's part along the
/// vertical is sin β, lying flat or set on its edge. JCGM 100:2008 (GUM), 4.2.2 and F.2.2.1. Browsers tell tenths of a degree: common
/// practice, no source.</para>
/// </remarks>
/// <param name="Degrees">The angle.</param>
/// <param name="Uncertainty">One standard deviation.</param>
public sealed record Laid(double Degrees, double Uncertainty)
{
    /// <summary>How long it is felt, seconds.</summary>
    public const double Seconds = 1;

    private const double Resolution = 0.1;
    private const double MostScatter = 0.5;
    private const int FewestValues = 10;

    /// <summary>Of what was felt, front-back and left-right in turn, degrees.</summary>
    public static Answer<Laid> Of(ReadOnlySpan<double> felt)
    {
        if (felt.Length < 2 * FewestValues)
            return Answer<Laid>.Refuse("tooShort", $"Felt for too short a time: let it lie for a second.");
        var angles = new double[felt.Length / 2];
        for (var i = 0; i < angles.Length; i++)
            angles[i] = Math.Asin(Math.Sin(felt[2 * i] * Math.PI / 180)) * 180 / Math.PI;
        var mean = angles.Average();
        var s = Math.Sqrt(angles.Sum(a => (a - mean) * (a - mean)) / (angles.Length - 1));
        return s > MostScatter
            ? Answer<Laid>.Refuse(
                "notStill",
                $"It is still moving, by {Numerals.Plain(s, 1)}°: let it lie without a hand on it, then once more."
            )
            : new Laid(mean, Math.Sqrt(s * s + Resolution * Resolution / 12));
    }
}
