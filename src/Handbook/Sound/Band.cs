using System.Numerics;
using Witnessmark.Handbook.Numerics;

namespace Witnessmark.Handbook.Sound;

/// <summary>The spectrum of a recording, from which bands and hum are cut.</summary>
/// <remarks>
/// <para><b>Formula.</b> The lines outside the band, and those within a width of any multiple of the hum, are set to zero.</para>
/// <para><b>Units.</b> Hertz.</para>
/// <para><b>Source.</b> Arithmetic on the discrete Fourier transform.</para>
/// <para><b>Valid when</b> the hum keeps its frequency within the width: EN 50160 allows 50 Hz ± 1 % over 99.5 % of a year (from
/// memory), which interconnected networks keep far closer.</para>
/// </remarks>
internal sealed class Band
{
    /// <summary>Lines to either side of a multiple of the hum that belong to it, hertz.</summary>
    private const double HumWidth = 0.6;

    private readonly Complex[] lines;
    private readonly int length;
    private readonly double spacing;

    public Band(Recording recording, double low, double high)
    {
        length = recording.Samples.Length;
        lines = new Complex[FourierTransform.Room(length)];
        for (var i = 0; i < length; i++)
            lines[i] = recording.Samples[i];
        FourierTransform.Forward(lines);
        spacing = recording.Rate.Hertz / lines.Length;
        Clear(f => f < low || f > high);
    }

    private Band(Band other)
    {
        (lines, length, spacing) = ([.. other.lines], other.length, other.spacing);
    }

    /// <summary>The same without the hum of a mains frequency and its multiples.</summary>
    public Band Without(double hum)
    {
        var quiet = new Band(this);
        var width = Math.Max(HumWidth, spacing * lines.Length / length);
        quiet.Clear(f => Math.Abs(f - hum * Math.Round(f / hum)) < width);
        return quiet;
    }

    /// <summary>Sum of the squares of the lines.</summary>
    public double Energy => lines.Sum(x => x.Real * x.Real + x.Imaginary * x.Imaginary);

    /// <summary>As samples again.</summary>
    public double[] Samples()
    {
        Complex[] back = [.. lines];
        FourierTransform.Back(back);
        return [.. back.Take(length).Select(x => x.Real)];
    }

    private void Clear(Func<double, bool> outside)
    {
        for (var k = 0; k < lines.Length; k++)
            if (outside(spacing * Math.Min(k, lines.Length - k)))
                lines[k] = Complex.Zero;
    }
}
