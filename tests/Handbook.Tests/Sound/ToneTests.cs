using Witnessmark.Handbook.Sound;

namespace Witnessmark.Handbook.Tests.Sound;

/// <summary>Which of the things that sound is the tone: steady sines of known frequency and strength.</summary>
public class ToneTests
{
    private static SoundMaker Sound(double seconds = 2, double rate = 8_000) => new(4, seconds, rate);

    [Fact]
    public void Beside_a_hum_that_is_known_the_tone_is_found_and_the_hum_is_told()
    {
        var heard = Tone.In(Sound().Steady(137.3, 1).Steady(60, 1).Recording, null, new(60)).Certain;
        Assert.Equal(137.3, heard.Frequency.Hertz, 0.1);
        Assert.Equal(60, heard.Hum!.Value.Hertz);
    }

    [Fact]
    public void Without_hum_none_is_told() => Assert.Null(Tone.In(Sound().Steady(137.3, 1).Recording).Certain.Hum);

    // the highest pitch that is looked for is an eighth of the rate: 500 Hz of 4000
    [Theory]
    [InlineData(470, true)]
    [InlineData(620, false)]
    public void Above_an_eighth_of_the_rate_nothing_is_heard(double hertz, bool found) =>
        Assert.Equal(found, Tone.In(Sound(rate: 4_000).Steady(hertz, 1).Recording).Refusal is null);

    // 2 kHz is the highest whatever the rate
    [Theory]
    [InlineData(1_930, true)]
    [InlineData(2_300, false)]
    public void Above_two_kilohertz_nothing_is_heard(double hertz, bool found) =>
        Assert.Equal(found, Tone.In(Sound(1, 44_100).Steady(hertz, 1).Recording).Refusal is null);

    [Theory]
    [InlineData(150.4)]
    [InlineData(179.7)]
    public void A_tone_beside_a_multiple_of_the_mains_cannot_be_told_from_hum(double hertz) =>
        Assert.Contains(
            "mains hum",
            Tone.In(Sound().Steady(hertz, 1).Recording).Refusal!.Because,
            StringComparison.Ordinal
        );

    [Theory]
    [InlineData(153)]
    [InlineData(177)]
    public void A_few_hertz_aside_it_can(double hertz) =>
        Assert.Equal(hertz, Tone.In(Sound().Steady(hertz, 1).Recording).Certain.Frequency.Hertz, 0.1);

    [Fact]
    public void Hum_alone_is_no_tone()
    {
        var refusal = Tone.In(Sound().Steady(50, 1, 0, 0.5).Recording).Refusal!;
        Assert.Contains("mains hum", refusal.Because, StringComparison.Ordinal);
    }
}
