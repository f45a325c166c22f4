using System.Numerics;
using FsCheck.Xunit;
using Witnessmark.Handbook.Quantities;
using Witnessmark.Handbook.Wheels;

namespace Witnessmark.Handbook.Tests.Wheels;

public class WheelBalanceTests
{
    private const double Degree = Math.PI / 180;

    private static Vibration Read(double amount, double degrees) => new(amount, new(degrees * Degree));

    private static Vibration Read(Complex vector) => new(vector.Magnitude, new(vector.Phase));

    private static Complex Vector(PlacedWeight weight) =>
        Complex.FromPolarCoordinates(weight.Mass.Grams, weight.Angle.Radians);

    /// <summary>A wheel that lacks this mass at 0°, on a scale that reads grams: the correction is the mass itself.</summary>
    private static Balance Lacking(double grams, params double[] box) =>
        WheelBalance
            .From(Read(grams, 180), new(1000), default, Read(1000 - grams, 0), [.. box.Select(m => new Mass(m))])
            .Certain;

    // Oracle in complex numbers: a wheel of known unbalance and known response; with the correction placed nothing remains
    [Property(MaxTest = 500)]
    public void The_correction_cancels_the_unbalance(uint mass, uint at, uint trial, uint where, uint gain, uint lag)
    {
        var unbalance = Complex.FromPolarCoordinates(Chance.Between(1, 90, mass), Chance.Between(0, 7, at));
        var response = Complex.FromPolarCoordinates(Chance.Between(0.01, 5, gain), Chance.Between(-4, 4, lag));
        var weight = Chance.Between(1, 40, trial);
        var angle = Chance.Between(-9, 9, where);
        var found = WheelBalance
            .From(
                Read(response * unbalance),
                new(weight),
                new(angle),
                Read(response * (unbalance + Complex.FromPolarCoordinates(weight, angle)))
            )
            .Certain.Correction;
        Assert.True((unbalance + Vector(found)).Magnitude < 1e-9 * unbalance.Magnitude * 1000);
        Assert.InRange(found.Angle.Radians, 0, Math.Tau);
    }

    // A public tutorial on the vector method, drawn on polar paper (read): 7 at 160°, with 100 g 5 at 70°. Drawn: effect 9, weight 77.77 g,
    // angle between 35°. Exactly: √(7² + 5²) = 8.602, atan(5/7) = 35.54°
    [Fact]
    public void An_example_drawn_on_polar_paper()
    {
        var found = WheelBalance.From(Read(7, 160), new(100), default, Read(5, 70)).Certain.Correction;
        Assert.Equal(77.77, found.Mass.Grams, tolerance: 0.05 * 77.77);
        Assert.Equal(100 * 7 / Math.Sqrt(74), found.Mass.Grams, 1e-9);
        Assert.Equal(35, Math.Min(found.Angle.Radians, Math.Tau - found.Angle.Radians) / Degree, tolerance: 1);
    }

    // The change of angle tells to which side: turning the reading the other way turns the correction the other way
    [Fact]
    public void The_side_is_told_by_the_reading()
    {
        var one = WheelBalance.From(Read(7, 160), new(100), default, Read(5, 70)).Certain.Correction.Angle.Radians;
        var other = WheelBalance.From(Read(7, -160), new(100), default, Read(5, -70)).Certain.Correction.Angle.Radians;
        Assert.Equal(Math.Tau, one + other, 1e-9);
    }

    [Fact]
    public void A_wheel_in_balance_needs_nothing()
    {
        var balance = WheelBalance.From(Read(0, 77), new(20), new(1), Read(3, 10), [new(5)]).Certain;
        Assert.Equal((0, 0), (balance.Correction.Mass.Grams, balance.Correction.Angle.Radians));
        Assert.Empty(balance.Placing!.Weights);
        Assert.Equal(0, balance.Placing.Residual.Grams);
        Assert.False(balance.Faint);
    }

    [Theory]
    [InlineData(10, 10)]
    [InlineData(10, 10.009)]
    [InlineData(10, 9.991)]
    [InlineData(10, 9.990005)] // below a thousandth of the larger, above one of the smaller
    [InlineData(0, 0)]
    public void A_trial_weight_that_changes_nothing_is_refused(double before, double after) =>
        Assert.Equal(
            "trialTooSmall",
            WheelBalance.From(Read(before, 30), new(20), default, Read(after, 30)).Refusal?.Key
        );

    [Theory]
    [InlineData(10, 10.0101)]
    [InlineData(10, 9.9899)]
    public void Just_above_that_it_is_answered(double before, double after) =>
        Assert.True(WheelBalance.From(Read(before, 30), new(20), default, Read(after, 30)).Holds);

    // Rule of thumb of the same tutorial: 30 % or 30°
    [Theory]
    [InlineData(12.9, 29.9, true)]
    [InlineData(7.1, -29.9, true)]
    [InlineData(13, 0, false)] // 30 % is not less than 30 %
    [InlineData(13.1, 0, false)]
    [InlineData(6.9, 0, false)]
    [InlineData(10, 30.1, false)]
    [InlineData(10, 330.1, true)] // 29.9° the other way
    [InlineData(10, 329.9, false)]
    public void A_faint_trial_is_told(double amount, double degrees, bool faint) =>
        Assert.Equal(faint, WheelBalance.From(Read(10, 0), new(20), default, Read(amount, degrees)).Certain.Faint);

    [Fact]
    public void Thirty_degrees_are_not_less_than_thirty_degrees()
    {
        var turned = new Vibration(10, new(Math.PI / 6));
        Assert.False(WheelBalance.From(Read(10, 0), new(20), default, turned).Certain.Faint);
    }

    // Two equal masses at ± a from the correction give 2·m·cos a
    [Fact]
    public void Two_equal_weights_stand_symmetrically()
    {
        var placed = Lacking(30, 20, 20).Placing!;
        Assert.Equal(0, placed.Residual.Grams);
        var a = Math.Acos(30 / (2 * 20.0));
        Assert.Equal(Math.Tau - a, placed.Weights[0].Angle.Radians, 1e-9);
        Assert.Equal(a, placed.Weights[1].Angle.Radians, 1e-9);
    }

    [Fact]
    public void What_is_left_is_what_the_vectors_leave()
    {
        Assert.Equal(5, Left(Lacking(30, 20, 5)), 1e-9); // both at the correction
        Assert.Equal(1, Left(Lacking(3, 9, 5)), 1e-9); // one against the other
        Assert.Equal(0, Left(Lacking(6, 9, 4)), 1e-9); // a triangle
        Assert.Equal(1, Left(Lacking(6, 7)), 1e-9);
    }

    private static double Left(Balance balance)
    {
        var left = (
            Vector(balance.Correction) - balance.Placing!.Weights.Aggregate(Complex.Zero, (s, w) => s + Vector(w))
        ).Magnitude;
        Assert.Equal(left, balance.Placing.Residual.Grams, 1e-9);
        return left;
    }

    [Theory]
    [InlineData(35, new double[] { 20, 20, 35 }, new double[] { 35 })] // one weight before two
    [InlineData(35, new double[] { 30, 10, 20, 20 }, new double[] { 20, 20 })] // equally light: the more equal pair
    [InlineData(35, new double[] { 60, 40, 30, 10 }, new double[] { 30, 10 })] // lightest together
    [InlineData(35, new double[] { 20 }, new double[] { 20 })] // one piece listed once is used once
    [InlineData(35, new double[] { 5, 10 }, new double[] { 10, 5 })]
    [InlineData(10, new double[] { 30 }, new double[] { })] // it would make it worse
    [InlineData(15, new double[] { 30 }, new double[] { })] // no better: none before one
    [InlineData(15.1, new double[] { 30 }, new double[] { 30 })]
    [InlineData(35, new double[] { }, new double[] { })]
    public void The_choice_from_the_box(double grams, double[] box, double[] chosen) =>
        Assert.Equal(chosen, Lacking(grams, box).Placing!.Weights.Select(w => w.Mass.Grams));

    // A correction that rounding lifts above a weight of the box by less than a microgram does not cost a second weight
    [Theory]
    [InlineData(35 + 5e-7, 1)]
    [InlineData(35 + 5e-6, 2)]
    public void Rounding_buys_no_second_weight(double grams, int count) =>
        Assert.Equal(count, Lacking(grams, 35, 20, 20).Placing!.Weights.Count);

    // Oracle by force: every choice of at most two pieces, each pair turned through every half degree
    [Property(MaxTest = 60)]
    public void No_choice_of_the_box_leaves_less(uint lacking, uint[] pieces)
    {
        var box = pieces.Take(5).Select(p => Math.Ceiling(Chance.Between(0, 12, p)) * 2.5).Where(m => m > 0).ToArray();
        var wanted = Chance.Between(0.5, 70, lacking);
        var least = wanted;
        for (var i = 0; i < box.Length; i++)
        {
            least = Math.Min(least, Math.Abs(wanted - box[i]));
            for (var j = 0; j < i; j++)
            for (var opening = 0.0; opening <= 180; opening += 0.5)
            {
                var sum = (box[i] + Complex.FromPolarCoordinates(box[j], opening * Degree)).Magnitude;
                least = Math.Min(least, Math.Abs(wanted - sum));
            }
        }
        // Half a degree moves the sum of two weights of at most 30 g by less than 0.27 g
        var found = Left(Lacking(wanted, box));
        Assert.InRange(found, least - 0.27, least + 1e-9);
    }

    // ISO 21940-11:2016: G = e·Ω, U = 9549·G·m/n; rows recomputed from it
    [Theory]
    [InlineData(6.3, 40, 3000, 802.1)]
    [InlineData(16, 10, 1000, 1527.9)]
    [InlineData(40, 10, 1000, 3819.7)]
    public void The_formula_for_what_may_remain_printed_on_the_page(double grade, double kg, double rpm, double gmm) =>
        Assert.Equal(gmm, grade / (rpm * Math.Tau / 60) * 1000 * kg, tolerance: 0.05);

    [Fact]
    public void Without_a_box_nothing_is_chosen() =>
        Assert.Null(WheelBalance.From(Read(7, 160), new(100), default, Read(5, 70)).Certain.Placing);

    [Theory]
    [InlineData(-1e-20)]
    [InlineData(720.5)]
    [InlineData(-359.5)]
    public void Angles_lie_within_one_turn(double degrees)
    {
        var angle = WheelBalance
            .From(Read(10, 180), new(10), new(degrees * Degree), Read(0.5, 180))
            .Certain.Correction.Angle.Radians;
        Assert.True(angle is >= 0 and < Math.Tau, $"{angle}");
    }
}
