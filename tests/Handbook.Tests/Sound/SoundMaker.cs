using Witnessmark.Handbook.Sound;

namespace Witnessmark.Handbook.Tests.Sound;

/// <summary>Makes the sound of belts, spokes, engines, mains hum and noise, each of a known pitch.</summary>
internal sealed class SoundMaker(int seed, double seconds = 2, double rate = 44_100)
{
    private readonly Random chance = new(seed);
    private readonly double[] samples = new double[(int)(seconds * rate)];

    public Recording Recording => new([.. samples], new(rate));

    public double Power => samples.Sum(x => x * x) / samples.Length;

    /// <summary>A plucked string: harmonics of falling strength, the higher the sooner silent.</summary>
    public SoundMaker Plucked(double hertz, double from = 0.1, double lasting = 0.5)
    {
        for (var h = 1; h <= 8 && h * hertz < rate / 2; h++)
        {
            var phase = 2 * Math.PI * chance.NextDouble();
            for (var i = (int)(from * rate); i < samples.Length; i++)
            {
                var t = i / rate - from;
                samples[i] += Math.Exp(-t * h / lasting) / h * Math.Sin(2 * Math.PI * h * hertz * t + phase);
            }
        }
        return this;
    }

    /// <summary>A steady tone with harmonics.</summary>
    public SoundMaker Steady(double hertz, params double[] strengths)
    {
        for (var h = 1; h <= strengths.Length; h++)
        {
            var phase = 2 * Math.PI * chance.NextDouble();
            for (var i = 0; i < samples.Length; i++)
                samples[i] += strengths[h - 1] * Math.Sin(2 * Math.PI * h * hertz * i / rate + phase);
        }
        return this;
    }

    /// <summary>An exhaust: a ringing pulse at every firing, the moments scattered by a share of the period.</summary>
    public SoundMaker Firing(double hertz, double scatter = 0.01, double ring = 110)
    {
        for (var n = 0; n / hertz < seconds; n++)
        {
            var at = (n + scatter * Normal()) / hertz;
            var strength = 1 + 0.1 * Normal();
            for (var i = Math.Max(0, (int)(at * rate) + 1); i < samples.Length && i / rate - at < 0.1; i++)
            {
                var t = i / rate - at;
                samples[i] += strength * Math.Exp(-t * 60) * Math.Sin(2 * Math.PI * ring * t);
            }
        }
        return this;
    }

    /// <summary>Mains hum with its third and fifth multiple, at so many decibels to what is there.</summary>
    public SoundMaker Hum(double hertz, double decibels)
    {
        var amplitude = Math.Sqrt(2 * Power * Math.Pow(10, decibels / 10) / (1 + 0.25 + 0.09));
        return Steady(hertz, amplitude, 0, amplitude * 0.5, 0, amplitude * 0.3);
    }

    /// <summary>White noise, so many decibels below what is there.</summary>
    public SoundMaker Noise(double decibels)
    {
        var deviation = Math.Sqrt(Power * Math.Pow(10, -decibels / 10));
        return NoiseOf(deviation);
    }

    public SoundMaker NoiseOf(double deviation)
    {
        for (var i = 0; i < samples.Length; i++)
            samples[i] += deviation * Normal();
        return this;
    }

    private double Normal() =>
        Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(2 * Math.PI * chance.NextDouble());
}
