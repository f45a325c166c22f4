namespace Witnessmark.Bench.Listening;

/// <summary>How loud it is for the microphone.</summary>
public enum Loudness
{
    /// <summary>So quiet that there is nothing to judge.</summary>
    TooQuiet,

    /// <summary>Enough, and not too much.</summary>
    Good,

    /// <summary>Louder than the microphone can tell.</summary>
    Clipping,
}

/// <summary>The level of a stretch of sound.</summary>
/// <remarks>
/// <para><b>Formula.</b> The largest sample, full scale 1; in decibels 20·log₁₀ of it. Too quiet below −46 dB; clipping where four samples or
/// more stand at full scale.</para>
/// <para><b>Source.</b> Arithmetic; the two limits are own, no source.</para>
/// </remarks>
/// <param name="Peak">The largest sample, 0 to 1.</param>
/// <param name="Loudness">What that means.</param>
public readonly record struct SoundLevel(double Peak, Loudness Loudness)
{
    private const double Quietest = 0.005;
    private const double FullScale = 0.99;
    private const int SamplesAtFullScale = 4;

    /// <summary>Decibels that a drawing shows below full scale.</summary>
    public const double Shown = 60;

    /// <summary>The level of samples.</summary>
    public static SoundLevel Of(ReadOnlySpan<double> samples)
    {
        var (peak, full) = (0.0, 0);
        foreach (var sample in samples)
        {
            peak = Math.Max(peak, Math.Abs(sample));
            full += Math.Abs(sample) >= FullScale ? 1 : 0;
        }
        return new(
            peak,
            full >= SamplesAtFullScale ? Loudness.Clipping
                : peak < Quietest ? Loudness.TooQuiet
                : Loudness.Good
        );
    }

    /// <summary>Where it stands between the quietest that is drawn, 0, and full scale, 1.</summary>
    public double Height => Peak <= 0 ? 0 : Math.Clamp(1 + 20 * Math.Log10(Peak) / Shown, 0, 1);
}
