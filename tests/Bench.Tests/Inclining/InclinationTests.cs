using Witnessmark.Bench.Inclining;
using Witnessmark.Bench.Tests.Jobs;

namespace Witnessmark.Bench.Tests.Inclining;

/// <summary>The phone's inclination with its own error taken off.</summary>
public sealed class InclinationTests
{
    // Reversal: a surface of 0.4° under a phone that shows 0.7° too much reads 1.1° and, turned, 0.3°
    [Fact]
    public void Two_layings_tell_the_phones_error_and_the_surfaces_inclination()
    {
        var zero = PhoneZero.Of(Laid(1.1), Laid(0.3)).Certain;
        Assert.Equal(0.7, zero.Degrees, 1e-9);
        Assert.Equal(0.4, zero.Surface, 1e-9);
        // JCGM 100, 5.1.2: two values of u = 0.1/√12 each make u/√2 in their mean
        Assert.Equal(0.1 / Math.Sqrt(12) / Math.Sqrt(2), zero.Uncertainty, 1e-9);
    }

    [Fact]
    public void A_phone_that_was_not_turned_is_refused() =>
        Assert.Equal("notTurned", PhoneZero.Of(Laid(12), Laid(12)).Refusal?.Key);

    // s of the values 1.0 and 1.2 in turn, ten each: n/(n−1)·0.01 under the root (arithmetic); and 0.1°/√12
    [Fact]
    public void The_scatter_is_the_uncertainty()
    {
        double[] felt = [.. Enumerable.Range(0, 20).SelectMany(i => new[] { i % 2 == 0 ? 1.0 : 1.2, 0.0 })];
        var laid = Witnessmark.Bench.Inclining.Laid.Of(felt).Certain;
        Assert.Equal(1.1, laid.Degrees, 1e-9);
        Assert.Equal(Math.Sqrt(0.01 * 20 / 19 + 0.01 / 12), laid.Uncertainty, 1e-9);
    }

    [Fact]
    public void A_hand_that_still_moves_it_is_refused() =>
        Assert.Equal(
            "notStill",
            Witnessmark
                .Bench.Inclining.Laid.Of([.. Enumerable.Range(0, 20).SelectMany(i => new[] { (double)i, 0.0 })])
                .Refusal?.Key
        );

    [Fact]
    public void Too_few_values_are_refused() =>
        Assert.Equal("tooShort", Witnessmark.Bench.Inclining.Laid.Of([1, 0, 1, 0]).Refusal?.Key);

    // 1 % down is arctan 0.01 = 0.5729°, the upper end forward and lower: −0.5729°
    [Fact]
    public void The_aim_of_a_lamp_is_the_tangent_and_down_is_positive()
    {
        var aim = new Inclination(Laid(0.7 - 0.572938698), PhoneZero.Of(Laid(0.7), Laid(0.7)).Certain);
        Assert.Equal(1, aim.Aim.Value, 1e-6);
        Assert.Equal("1", aim.Digits);
        // small angles: u in percent is u in degrees · π/180 · 100
        Assert.Equal(aim.Uncertainty * Math.PI / 1.8, aim.Device.Uncertainty.Value, 1e-4);
    }

    // docs/handbook/oil-tilt.md, worked example by hand: 2° towards the stick, 60 mm away, 22 mm apart: 0.0952 too much
    [Theory]
    [InlineData(60, 0.0952)]
    [InlineData(-60, -0.0952)]
    public void A_lean_to_the_left_shows_too_much_on_a_stick_on_the_left(double offset, double error)
    {
        var lean = new Inclination(Laid(2.7), PhoneZero.Of(Laid(1.1), Laid(0.3)).Certain);
        Assert.Equal(2, lean.Degrees, 1e-9);
        Assert.Equal(error, lean.OnLevel(new(offset), new(22)).Certain.Error, 1e-4);
    }

    [Fact]
    public void Farther_over_than_ten_degrees_nothing_is_reckoned() =>
        Assert.Equal(
            "tooFarOver",
            new Inclination(Laid(12), PhoneZero.Of(Laid(0), Laid(0)).Certain).OnLevel(new(60), new(22)).Refusal?.Key
        );

    [Theory]
    [InlineData("oil-level", InclineUse.Lean)]
    [InlineData("headlamp-aim", InclineUse.Aim)]
    public void The_book_says_where_it_helps(string point, InclineUse use) =>
        Assert.Equal(use, InclineUses.Of(AtWork.Bench.Book.Points[point]));

    private static Laid Laid(double degrees) =>
        Witnessmark
            .Bench.Inclining.Laid.Of([.. Enumerable.Range(0, 20).SelectMany(_ => new[] { degrees, 0.0 })])
            .Certain;
}
