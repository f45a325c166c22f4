using Witnessmark.Handbook.Quantities;
using Witnessmark.Handbook.Sound;

namespace Witnessmark.Handbook.Tests.Sound;

/// <summary>Sounds of known pitch under hum and noise as strong as themselves; the table of docs/handbook/tone.md is from here.</summary>
public class ToneStudyTests
{
    private const int Sounds = 12;
    private const double MostError = 0.005;

    private static readonly Dictionary<string, (Action<SoundMaker, double> Make, double Low, double High)> Kinds = new()
    {
        ["belt"] = ((m, f) => m.Plucked(f), 40, 200),
        ["spoke"] = ((m, f) => m.Plucked(f, lasting: 0.15), 250, 900),
        ["engine"] = ((m, f) => m.Firing(f), 12, 70),
        ["sine"] = ((m, f) => m.Steady(f, 1), 30, 1000),
    };

    // Refusals found when the study was written: more would be a loss. Without hum, hum at −6 dB, hum at 0 dB.
    [Theory]
    [InlineData("belt", "nothing", 0, 0, 3)]
    [InlineData("belt", "range", 0, 0, 1)]
    [InlineData("belt", "mains", 0, 0, 0)]
    [InlineData("spoke", "nothing", 0, 1, 12)]
    [InlineData("spoke", "range", 0, 0, 0)]
    [InlineData("spoke", "mains", 0, 0, 0)]
    [InlineData("engine", "nothing", 2, 3, 5)]
    [InlineData("engine", "range", 1, 1, 5)]
    [InlineData("engine", "mains", 1, 1, 1)]
    [InlineData("sine", "nothing", 2, 6, 7)]
    [InlineData("sine", "range", 1, 2, 3)]
    [InlineData("sine", "mains", 1, 1, 1)]
    public void Within_half_a_per_cent_or_refused(string kind, string told, int none, int quiet, int loud)
    {
        Assert.InRange(Refused(kind, told, null), 0, none);
        Assert.InRange(Refused(kind, told, -6), 0, quiet);
        Assert.InRange(Refused(kind, told, 0), 0, loud);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Noise_alone_has_no_tone(bool ranged)
    {
        for (var seed = 0; seed < 25; seed++)
            Assert.Equal(
                "noClearTone",
                Tone.In(
                    new SoundMaker(seed, 1).NoiseOf(0.1).Recording,
                    ranged ? (new(60), new(120)) : null
                ).Refusal?.Key
            );
    }

    private static int Refused(string kind, string told, double? hum)
    {
        var (make, low, high) = Kinds[kind];
        var (refused, worst) = (0, 0.0);
        for (var seed = 0; seed < Sounds; seed++)
        {
            var chance = new Random(1000 + seed);
            var pitch = low * Math.Pow(high / low, chance.NextDouble());
            var sound = new SoundMaker(seed);
            make(sound, pitch);
            // Mains frequency stays within ± 0.05 Hz for most of the day (from memory).
            if (hum is { } decibels)
                sound.Hum(50 + 0.1 * (chance.NextDouble() - 0.5), decibels);
            sound.Noise(0);
            (Frequency, Frequency)? expected = told == "nothing" ? null : (new(pitch / 1.3), new(pitch * 1.3));
            var heard = Tone.In(sound.Recording, expected, told == "mains" ? new Frequency(50) : null);
            if (!heard.Holds)
                refused++;
            else
                worst = Math.Max(worst, Math.Abs(heard.Certain.Frequency.Hertz / pitch - 1));
            Assert.True(worst < MostError, $"{kind} at {pitch} Hz: {heard.Value?.Frequency.Hertz} Hz");
        }
        TestContext.Current.TestOutputHelper!.WriteLine(
            $"{kind}, {told} told, hum {hum} dB: {refused} of {Sounds} refused, worst {worst:p2}"
        );
        return refused;
    }
}
