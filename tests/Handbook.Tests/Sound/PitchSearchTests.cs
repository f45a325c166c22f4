using Witnessmark.Handbook.Sound;

namespace Witnessmark.Handbook.Tests.Sound;

/// <summary>Sounds whose pitch, likeness and scatter can be worked out by hand.</summary>
public class PitchSearchTests
{
    private const double Rate = 4_000;

    private static double[] Sine(double hertz, double seconds, double strength = 1) =>
        [
            .. Enumerable
                .Range(0, (int)(seconds * Rate))
                .Select(i => strength * Math.Sin(2 * Math.PI * hertz * i / Rate)),
        ];

    private static Pitch? In(double[] samples, double lowest = 50, double highest = 200) =>
        new PitchSearch(Rate, lowest, highest).In(samples);

    [Theory]
    [InlineData(61.7)]
    [InlineData(100)]
    [InlineData(187.3)]
    public void A_pure_tone_has_its_pitch_full_clarity_and_no_rival(double hertz)
    {
        var pitch = In(Sine(hertz, 1))!;
        Assert.Equal(hertz, pitch.Hertz, 0.01);
        Assert.InRange(pitch.Clarity, 0.999, 1);
        Assert.InRange(pitch.Deviation, 0, 0.02);
        Assert.Equal(0, pitch.Rival, 1e-6);
    }

    // n(T/2) of sin + a·sin 2: (a² − 1)/(a² + 1); a = 2 gives 0.6, the period stays T
    [Fact]
    public void The_rival_is_the_likeness_at_half_the_period_when_the_octave_is_strong()
    {
        double[] both = [.. Sine(100, 1).Zip(Sine(200, 1, 2), (a, b) => a + b)];
        var pitch = In(both, 50, 400)!;
        Assert.Equal(100, pitch.Hertz, 0.02);
        Assert.Equal(0.6, pitch.Rival, 0.01);
    }

    // the same sound, but its period lies below the range: what is asked for is the octave, as clear as it is
    [Fact]
    public void A_clearer_tone_below_the_range_does_not_hide_the_one_within()
    {
        double[] both = [.. Sine(50, 1).Zip(Sine(100, 1, 2), (a, b) => a + b)];
        var pitch = In(both, 80, 200)!;
        Assert.Equal(100, pitch.Hertz, 0.5);
        Assert.Equal(0.6, pitch.Clarity, 0.02);
    }

    // (cos θ + 1.5·cos 7θ)/2.5 at θ = 1/7, 2/7, 3/7 of a turn: 0.85, 0.51, 0.24; the first is the best of the shorter ones
    [Fact]
    public void The_rival_is_the_best_of_all_shorter_shifts()
    {
        double[] both = [.. Sine(60, 1).Zip(Sine(420, 1, Math.Sqrt(1.5)), (a, b) => a + b)];
        var pitch = In(both)!;
        Assert.Equal(60, pitch.Hertz, 0.05);
        Assert.Equal((Math.Cos(2 * Math.PI / 7) + 1.5) / 2.5, pitch.Rival, 0.03);
    }

    // a = 5: (25 − 1)/(25 + 1) = 0.923, above nine tenths of the best: then the first one is the period
    [Fact]
    public void An_octave_that_is_nearly_all_of_the_sound_is_the_pitch()
    {
        double[] both = [.. Sine(100, 1).Zip(Sine(200, 1, 5), (a, b) => a + b)];
        Assert.Equal(200, In(both, 50, 400)!.Hertz, 0.5);
    }

    // a = 4: 15/17 = 0.882, below nine tenths
    [Fact]
    public void One_a_little_weaker_is_not()
    {
        double[] both = [.. Sine(100, 1).Zip(Sine(200, 1, 4), (a, b) => a + b)];
        Assert.Equal(100, In(both, 50, 400)!.Hertz, 0.1);
    }

    [Theory]
    [InlineData(20, 60)]
    [InlineData(150, 400)]
    public void A_tone_out_of_the_range_is_none_and_none_of_its_multiples_is(double lowest, double highest) =>
        Assert.Null(In(Sine(100, 1), lowest, highest));

    [Theory]
    [InlineData(100, 400)]
    [InlineData(40, 100)]
    public void A_tone_at_an_end_of_the_range_is_found(double lowest, double highest) =>
        Assert.Equal(100, In(Sine(100, 1), lowest * 0.999, highest * 1.001)!.Hertz, 0.05);

    // three fifths of the energy decide: 0.8 s against 0.2 s is enough, half and half is not
    [Theory]
    [InlineData(0.8, true)]
    [InlineData(0.5, false)]
    public void The_tone_that_most_stretches_have_counts_and_without_one_there_is_none(double share, bool found)
    {
        var pitch = In([.. Sine(100, 2 * share), .. Sine(130, 2 * (1 - share))]);
        Assert.Equal(found, pitch is not null);
        if (found)
            Assert.Equal(100, pitch!.Hertz, 0.3);
    }

    // A louder tone has more energy: 0.5 s at strength 2 against 1.5 s at strength 1 is 4 · 0.5 = 2 to 1.5, not three fifths
    [Theory]
    [InlineData(2, false)]
    [InlineData(4, true)]
    public void What_counts_is_energy_not_time(double strength, bool found) =>
        Assert.Equal(found, In([.. Sine(100, 0.5, strength), .. Sine(130, 1.5)]) is { Hertz: < 110 });

    [Fact]
    public void A_tone_that_sounds_for_a_while_is_found_in_the_silence() =>
        Assert.Equal(100, In([.. new double[4_000], .. Sine(100, 1), .. new double[4_000]])!.Hertz, 0.1);

    // From 100 to 102 Hz in 1 s: 13 stretches of 0.25 s, each a sixteenth of a second on, 0.125 Hz apart. Variance
    // (13² − 1)/12 · 0.125² = 0.2188 Hz²; 13 stretches in fourfold overlap count as 6.5: √(0.2188/6.5) = 0.183 Hz
    [Fact]
    public void A_tone_that_slides_has_the_scatter_of_its_stretches()
    {
        double[] sliding =
        [
            .. Enumerable
                .Range(0, (int)Rate)
                .Select(i => i / Rate)
                .Select(t => Math.Sin(2 * Math.PI * (100 * t + t * t))),
        ];
        var pitch = In(sliding)!;
        Assert.Equal(101, pitch.Hertz, 0.1);
        Assert.Equal(0.183, pitch.Deviation, 0.01);
    }

    [Fact]
    public void Noise_and_silence_have_no_pitch()
    {
        Assert.Null(In(new double[(int)Rate]));
        Assert.Null(In(new SoundMaker(3, 1, Rate).NoiseOf(1).Recording.Samples));
    }

    // S/(S + N) of a tone of power S under noise of power N (McLeod and Wyvill's measure, white noise): 0.8 for a quarter
    [Theory]
    [InlineData(0.25, 0.8)]
    [InlineData(0.1, 0.909)]
    public void Clarity_is_the_share_of_the_tone(double noise, double clarity)
    {
        var random = new SoundMaker(5, 4, Rate).NoiseOf(Math.Sqrt(noise / 2)).Recording.Samples;
        double[] sound = [.. Sine(100, 4).Zip(random, (a, b) => a + b)];
        Assert.Equal(clarity, In(sound)!.Clarity, 0.03);
    }
}
