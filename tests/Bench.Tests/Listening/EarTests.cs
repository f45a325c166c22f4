using Witnessmark.Bench.Listening;
using Witnessmark.Handbook;
using Witnessmark.Handbook.Sound;

namespace Witnessmark.Bench.Tests.Listening;

/// <summary>What is kept of a sound that passes.</summary>
public sealed class EarTests
{
    [Fact]
    public void One_look_alone_keeps_nothing() => Assert.Null(Ear.Fresh.After(Clear(88.5)).Kept);

    [Fact]
    public void Two_looks_that_agree_keep_the_pitch_after_the_sound_is_gone()
    {
        var ear = Ear.Fresh.After(Clear(88.5)).After(Clear(88.52)).After(Noise()).After(Noise());
        Assert.Equal(88.52, ear.Kept?.Frequency.Hertz);
    }

    // 0.5 % of 88.5 Hz is 0.44 Hz
    [Theory]
    [InlineData(88.9, true)]
    [InlineData(89.0, false)]
    public void Looks_agree_up_to_half_a_percent(double second, bool kept) =>
        Assert.Equal(kept, Ear.Fresh.After(Clear(88.5)).After(Clear(second)).Kept is not null);

    [Fact]
    public void Looks_with_noise_between_them_are_not_one_after_the_other() =>
        Assert.Null(Ear.Fresh.After(Clear(88.5)).After(Noise()).After(Clear(88.5)).Kept);

    [Fact]
    public void Of_the_same_pluck_the_surest_look_is_kept_and_another_pitch_replaces_it()
    {
        var ear = Ear.Fresh.After(Clear(88.5)).After(Clear(88.5, 0.01)).After(Clear(88.51, 0.2));
        Assert.Equal(0.01, ear.Kept?.Uncertainty.Hertz);
        Assert.Equal(120, ear.After(Clear(120)).After(Clear(120)).Kept?.Frequency.Hertz);
    }

    private static Listened Clear(double hertz, double u = 0.05) =>
        new(new(0.5, Loudness.Good), new Heard(new(hertz), 0.95, new(u), null), new(0, 500, []));

    private static Listened Noise() =>
        new(new(0.5, Loudness.Good), Answer<Heard>.Refuse("noClearTone", $"none"), new(0, 500, []));
}
