using Witnessmark.Handbook.Sound;

namespace Witnessmark.Handbook.Tests.Sound;

/// <summary>What is hum, what is only in common with it, and what is still there without it: worked out by hand at the bounds.</summary>
public class QuietTests
{
    // multiples of 50 Hz; below half the mains frequency the nearest one is 50 Hz itself
    [Theory]
    [InlineData(50.5, true)]
    [InlineData(49.5, true)]
    [InlineData(51, false)]
    [InlineData(49, false)]
    [InlineData(150.9, true)]
    [InlineData(125, false)]
    [InlineData(20, false)]
    [InlineData(0.5, false)]
    public void A_pitch_is_hum_within_a_hertz_of_a_multiple(double hertz, bool hum) =>
        Assert.Equal(hum, new Quiet(50, 0.5, null).IsHum(Heard(hertz), 1));

    // 25 Hz and 16.8 Hz go into 50 Hz twice and three times; 24 Hz misses by 4 %
    [Theory]
    [InlineData(25, 0.6, true)]
    [InlineData(16.8, 0.6, true)]
    [InlineData(24, 0.6, false)]
    [InlineData(50.4, 0.6, true)]
    [InlineData(50.6, 0.6, false)]
    [InlineData(100, 0.6, false)]
    [InlineData(25, 0.45, false)]
    [InlineData(25, 0.46, true)]
    [InlineData(25, 0.2, false)]
    public void A_part_of_the_mains_frequency_with_a_rival_half_as_clear_may_be_a_coincidence(
        double hertz,
        double rival,
        bool coincidence
    ) =>
        Assert.Equal(
            coincidence,
            new Quiet(50, 0.5, null).IsCoincidence(Heard(hertz) with { Clarity = 0.9, Rival = rival }, 0.01)
        );

    [Theory]
    [InlineData(100, 0.5, true)]
    [InlineData(125, 0.5, true)]
    [InlineData(126, 0.5, false)]
    [InlineData(75, 0.5, true)]
    [InlineData(74, 0.5, false)]
    [InlineData(100, 0.89, true)]
    [InlineData(100, 0.9, false)]
    public void A_pitch_is_confirmed_by_the_same_one_without_hum_while_a_tenth_of_the_sound_is_left(
        double without,
        double humShare,
        bool confirmed
    ) => Assert.Equal(confirmed, new Quiet(50, humShare, Heard(without)).Confirms(Heard(100), 0.25));

    [Fact]
    public void Where_nothing_is_heard_without_hum_nothing_is_confirmed() =>
        Assert.False(new Quiet(50, 0.5, null).Confirms(Heard(100), 0.25));

    // a sine of power 1/2 for each amplitude: 50 Hz at 1 and 200 Hz at 2 share the energy 1 to 4
    [Fact]
    public void The_share_of_the_hum_is_its_share_of_the_energy()
    {
        var sound = new SoundMaker(1, 2, 4_096).Steady(50, 1).Steady(220, 2).Recording;
        var heard = Pitches.Of(sound, 40, 400, [50, 60]);
        Assert.Equal(0.2, heard.Quiet[0].HumShare, 1e-6);
        Assert.Equal(0, heard.Quiet[1].HumShare, 1e-6);
        Assert.Equal((50, 60), (heard.Quiet[0].Hum, heard.Quiet[1].Hum));
        Assert.Equal(220, heard.Quiet[0].Pitch!.Hertz, 0.1);
        Assert.Equal(heard.All.Count(), heard.Quiet.Count(q => q.Pitch is not null) + (heard.AsIs is null ? 0 : 1));
    }

    [Fact]
    public void Below_one_second_no_hum_is_taken_out()
    {
        var heard = Pitches.Of(new SoundMaker(1, 0.99, 4_000).Steady(220, 1).Recording, 40, 400, [50]);
        Assert.Equal((0, null), (heard.Quiet[0].HumShare, heard.Quiet[0].Pitch));
        var longer = Pitches.Of(new SoundMaker(1, 1, 4_000).Steady(220, 1).Recording, 40, 400, [50]);
        Assert.NotNull(longer.Quiet[0].Pitch);
    }

    [Fact]
    public void Silence_has_no_share_of_hum() =>
        Assert.Equal(0, Pitches.Of(new(new double[8_000], new(4_000)), 40, 400, [50]).Quiet[0].HumShare);

    private static Pitch Heard(double hertz) => new(hertz, 0.9, 0.01, 0);
}
