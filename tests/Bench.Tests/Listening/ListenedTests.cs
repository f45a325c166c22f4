using Witnessmark.Bench.Listening;
using Witnessmark.Handbook.Sound;
using Witnessmark.Handbook.Tests.Sound;

namespace Witnessmark.Bench.Tests.Listening;

/// <summary>What is heard in sounds that were made with a known pitch, and what is refused.</summary>
public sealed class ListenedTests
{
    private static readonly PitchRange Belt = new(new(5), new(200));

    // Expected from how the sound was made
    [Theory]
    [InlineData(48.3)]
    [InlineData(88.5)]
    [InlineData(171.2)]
    public void A_plucked_tone_is_heard_within_its_uncertainty(double hertz)
    {
        var heard = Listened.To(new SoundMaker(7, rate: 48_000).Plucked(hertz).NoiseOf(0.01).Recording, Belt);
        var pitch = heard.Pitch.Certain;
        Assert.InRange(Math.Abs(pitch.Frequency.Hertz - hertz), 0, 3 * PitchReading.Uncertain(pitch));
    }

    [Fact]
    public void Noise_is_refused_in_words()
    {
        var heard = Listened.To(new SoundMaker(3, rate: 48_000).NoiseOf(0.1).Recording, Belt);
        Assert.Equal("noClearTone", heard.Pitch.Refusal?.Key);
        Assert.Equal(Loudness.Good, heard.Level.Loudness);
    }

    [Fact]
    public void Silence_is_too_quiet_and_not_asked_for_a_pitch()
    {
        var heard = Listened.To(new Recording(new double[96_000], new(48_000)), Belt);
        Assert.Equal(("tooQuiet", Loudness.TooQuiet), (heard.Pitch.Refusal?.Key, heard.Level.Loudness));
        Assert.Empty(heard.Spectrum.Parts);
    }

    // a whisper of noise below the limit of −46 dB is no sound to judge
    [Fact]
    public void A_pitch_that_is_hardly_there_is_too_quiet() =>
        Assert.Equal("tooQuiet", Listened.To(Sine(100, 0.004), Belt).Pitch.Refusal?.Key);

    [Theory]
    [InlineData(0.2, Loudness.Good)]
    [InlineData(0.001, Loudness.TooQuiet)]
    [InlineData(3, Loudness.Clipping)]
    public void The_level_is_told(double strength, Loudness loudness) =>
        Assert.Equal(
            loudness,
            SoundLevel.Of([.. Sine(100, strength).Samples.Select(s => Math.Clamp(s, -1, 1))]).Loudness
        );

    // 20·log₁₀(0.1) = −20 dB, of 60 dB that are drawn: 1 − 20/60
    [Fact]
    public void The_bar_of_the_level_stands_by_decibels()
    {
        Assert.Equal(1 - 20.0 / 60, new SoundLevel(0.1, Loudness.Good).Height, 1e-12);
        Assert.Equal(0, new SoundLevel(0, Loudness.TooQuiet).Height);
    }

    [Fact]
    public void The_spectrum_is_strongest_where_the_tone_is()
    {
        var spectrum = SoundSpectrum.Of(Sine(137, 0.5), Belt);
        Assert.InRange(spectrum.Strongest!.Value, 137 - spectrum.High / 60, 137 + spectrum.High / 60);
        Assert.Equal(1, spectrum.Parts.Max());
    }

    [Fact]
    public void A_device_that_samples_too_slowly_for_the_range_says_so()
    {
        var slow = new Recording(
            new double[10_000]
                .Select((_, i) => Math.Sin(i))
                .ToArray(),
            new(5000)
        );
        Assert.Equal("tooSlow", Listened.To(slow, new(new(80), new(1500))).Pitch.Refusal?.Key);
    }

    private static Recording Sine(double hertz, double strength) =>
        new(
            [.. Enumerable.Range(0, 96_000).Select(i => strength * Math.Sin(2 * Math.PI * hertz * i / 48_000))],
            new(48_000)
        );
}
