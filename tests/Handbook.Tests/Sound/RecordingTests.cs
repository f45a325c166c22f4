using Witnessmark.Handbook.Quantities;
using Witnessmark.Handbook.Sound;

namespace Witnessmark.Handbook.Tests.Sound;

/// <summary>Thinning a recording keeps what the slower rate can hold and takes the rest out.</summary>
public sealed class RecordingTests
{
    private const double Rate = 48_000;

    // A Hamming window of this length lets 0.25 of the new rate through within its ripple (0.002 to either side: Oppenheim and Schafer,
    // Discrete-Time Signal Processing, table 7.2, 53 dB, from memory) and stops 0.7 of it by as much.
    [Theory]
    [InlineData(2)]
    [InlineData(5)]
    [InlineData(6)]
    public void What_the_new_rate_can_hold_stays_and_what_it_cannot_goes(int factor)
    {
        var slow = Rate / factor;
        Assert.Equal(1, Amplitude(Tone(0.25 * slow).Thinned(factor), 0.25 * slow), 0.003);
        Assert.Equal(1, Amplitude(Tone(0.05 * slow).Thinned(factor), 0.05 * slow), 0.003);
        Assert.InRange(Amplitude(Tone(0.7 * slow).Thinned(factor), 0.3 * slow), 0, 0.003);
        Assert.InRange(Amplitude(Tone(0.9 * slow).Thinned(factor), 0.1 * slow), 0, 0.003);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    [InlineData(7)]
    public void The_thinned_tone_has_its_samples_at_the_same_moments(int factor)
    {
        var slow = Rate / factor;
        var (tone, thinned) = (Tone(0.1 * slow), Tone(0.1 * slow).Thinned(factor));
        Assert.Equal(slow, thinned.Rate.Hertz, 1e-9);
        Assert.Equal(tone.Samples.Length / factor, thinned.Samples.Length);
        for (var i = 20; i < thinned.Samples.Length - 20; i++)
            Assert.Equal(tone.Samples[i * factor], thinned.Samples[i], 0.005);
    }

    // by the definition: sin(2π·c·k)/(π·k) under a Hamming window, one impulse in gives the filter out
    [Fact]
    public void An_impulse_gives_the_filter()
    {
        const int factor = 4;
        const int middle = 200;
        var impulse = new double[401];
        impulse[middle] = 1;
        var thinned = new Recording(impulse, new Frequency(Rate)).Thinned(factor).Samples;
        for (var i = 0; i < thinned.Length; i++)
        {
            var k = middle - i * factor;
            var ideal = k == 0 ? 2 * 0.45 / factor : Math.Sin(2 * Math.PI * 0.45 / factor * k) / (Math.PI * k);
            var window = Math.Abs(k) <= 8 * factor ? 0.54 + 0.46 * Math.Cos(Math.PI * k / (8 * factor)) : 0;
            Assert.Equal(ideal * window, thinned[i], 1e-12);
        }
    }

    [Fact]
    public void Sixteen_bits_are_read_little_end_first_and_to_full_scale()
    {
        var read = Recording.Of16Bit([0x00, 0x40, 0x00, 0x80, 0x01, 0x00], new Frequency(Rate));
        Assert.Equal([0.5, -1, 1 / 32768.0], read.Samples);
        Assert.Equal(3 / Rate, read.Seconds);
        Assert.Throws<ArgumentException>(() => Recording.Of16Bit([1], new Frequency(Rate)));
        Assert.Throws<ArgumentOutOfRangeException>(() => read.Thinned(0));
    }

    private static Recording Tone(double hertz) =>
        new(
            [.. Enumerable.Range(0, 24_000).Select(i => Math.Sin(2 * Math.PI * hertz * i / Rate + 0.3))],
            new Frequency(Rate)
        );

    // of one line of the spectrum, the ends left out where the filter runs into nothing
    private static double Amplitude(Recording recording, double hertz)
    {
        var middle = recording.Samples[40..^40];
        var (cosine, sine) = (0.0, 0.0);
        for (var i = 0; i < middle.Length; i++)
        {
            var angle = 2 * Math.PI * hertz * i / recording.Rate.Hertz;
            cosine += middle[i] * Math.Cos(angle);
            sine += middle[i] * Math.Sin(angle);
        }
        return 2 * Math.Sqrt(cosine * cosine + sine * sine) / middle.Length;
    }
}
