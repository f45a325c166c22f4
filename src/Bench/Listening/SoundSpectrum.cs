using System.Numerics;
using Witnessmark.Handbook.Numerics;
using Witnessmark.Handbook.Sound;

namespace Witnessmark.Bench.Listening;

/// <summary>How strong each part of a sound is, for a drawing; no verdict comes from it.</summary>
/// <remarks>
/// <para><b>Formula.</b> Hann window, discrete Fourier transform, the strongest line in each of equally wide parts, in decibels below the
/// strongest of all: 1 for that one, 0 for what is 40 dB weaker or less.</para>
/// <para><b>Source.</b> Harris, Proceedings of the IEEE 66 (1978) 51 (from memory): the window.</para>
/// </remarks>
/// <param name="Low">Where the first part begins, hertz.</param>
/// <param name="High">Where the last one ends, hertz.</param>
/// <param name="Parts">Their strengths, 0 to 1; empty when there is nothing to hear.</param>
public sealed record SoundSpectrum(double Low, double High, IReadOnlyList<double> Parts)
{
    /// <summary>How many parts are drawn.</summary>
    public const int Count = 60;

    private const double Decibels = 40;
    private const int MostSamples = 8192;

    /// <summary>The pitch in the middle of the strongest part, or null.</summary>
    public double? Strongest =>
        Parts.Count == 0 ? null : Low + (High - Low) * (Parts.ToList().IndexOf(Parts.Max()) + 0.5) / Parts.Count;

    /// <summary>The spectrum of the newest part of a sound, over a range of pitches and their first overtones.</summary>
    public static SoundSpectrum Of(Recording sound, PitchRange range)
    {
        var high = Math.Min(2.5 * range.Max.Hertz, 0.45 * sound.Rate.Hertz);
        var thin = sound.Thinned(Math.Max(1, (int)(sound.Rate.Hertz / (2.5 * high))));
        var lines = Lines(thin.Samples);
        var strengths = new double[Count];
        for (var k = 1; k < lines.Length / 2; k++)
        {
            var part = (int)(k * thin.Rate.Hertz / lines.Length / high * Count);
            if (part < Count)
                strengths[part] = Math.Max(strengths[part], lines[k].Magnitude);
        }
        var most = strengths.Max();
        return new(0, high, most > 0 ? [.. strengths.Select(s => Height(s / most))] : []);
    }

    private static double Height(double share) => share <= 0 ? 0 : Math.Max(0, 1 + 20 * Math.Log10(share) / Decibels);

    private static Complex[] Lines(double[] samples)
    {
        var length = Math.Min(samples.Length, MostSamples);
        var from = samples.Length - length;
        var lines = new Complex[FourierTransform.Room(length)];
        for (var i = 0; i < length; i++)
            lines[i] = samples[from + i] * (0.5 - 0.5 * Math.Cos(2 * Math.PI * i / length));
        FourierTransform.Forward(lines);
        return lines;
    }
}
