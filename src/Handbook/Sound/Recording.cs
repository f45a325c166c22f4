using System.Buffers.Binary;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Sound;

/// <summary>Sound as equally spaced samples of one channel, full scale ±1.</summary>
/// <param name="Samples">The samples.</param>
/// <param name="Rate">Samples in a second.</param>
public sealed record Recording(double[] Samples, Frequency Rate)
{
    /// <summary>Longest recording that is worked on: nobody plucks a belt for longer, and work stays bounded.</summary>
    public const double MostSeconds = 30;

    /// <summary>Slowest sampling taken, hertz: that of an old telephone line, halved.</summary>
    public const double LeastRate = 4_000;

    /// <summary>Fastest sampling taken, hertz.</summary>
    public const double MostRate = 192_000;

    /// <summary>One channel of 16 bit samples, little-endian.</summary>
    /// <exception cref="ArgumentException">The last sample is incomplete.</exception>
    public static Recording Of16Bit(byte[] bytes, Frequency rate)
    {
        if (bytes.Length % 2 != 0)
            throw new ArgumentException("Two bytes a sample.", nameof(bytes));
        var samples = new double[bytes.Length / 2];
        for (var i = 0; i < samples.Length; i++)
            samples[i] = BinaryPrimitives.ReadInt16LittleEndian(bytes.AsSpan(2 * i)) / 32768.0;
        return new(samples, rate);
    }

    /// <summary>How long it is.</summary>
    public double Seconds => Samples.Length / Rate.Hertz;

    /// <summary>The same sound with only every <paramref name="factor"/>-th sample, after everything too fast for that is taken out.</summary>
    /// <remarks>
    /// Windowed-sinc low-pass (Hamming) at 0.45 of the new rate. Source: Oppenheim and Schafer, Discrete-Time Signal Processing,
    /// 4.6 and 7.5 (from memory).
    /// </remarks>
    public Recording Thinned(int factor)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(factor, 1);
        if (factor == 1)
            return this;
        var filter = LowPass(0.45 / factor, 8 * factor);
        var reach = filter.Length / 2;
        var thinned = new double[Samples.Length / factor];
        for (var i = 0; i < thinned.Length; i++)
        {
            var from = i * factor - reach;
            var last = Math.Min(filter.Length, Samples.Length - from);
            for (var k = Math.Max(0, -from); k < last; k++)
                thinned[i] += filter[k] * Samples[from + k];
        }
        return new(thinned, Rate / factor);
    }

    private static double[] LowPass(double cutoff, int reach)
    {
        var filter = new double[2 * reach + 1];
        for (var k = -reach; k <= reach; k++)
        {
            var sinc = k == 0 ? 2 * cutoff : Math.Sin(2 * Math.PI * cutoff * k) / (Math.PI * k);
            filter[k + reach] = sinc * (0.54 + 0.46 * Math.Cos(Math.PI * k / reach));
        }
        return filter;
    }
}
