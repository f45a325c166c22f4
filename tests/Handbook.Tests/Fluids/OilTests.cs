using FsCheck.Xunit;
using Witnessmark.Handbook.Fluids;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Tests.Fluids;

public class OilTests
{
    private static double Draw(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());

    // Oracle: true level and true volume drawn at random (seeded). The bound is exact to first order in the volume's deviation.
    [Theory]
    [InlineData(0.5, 0.08, 0.4, 0.02, 0.01, 0.0095, 0.0125)]
    [InlineData(0.3, 0.15, 0.25, 0.02, 0.02, 0.0190, 0.0230)]
    [InlineData(0.1, 0.05, 0.5, 0.03, 0.01, 0.0095, 0.0150)]
    [InlineData(0.1, 0.05, 0.5, 0.05, 0.01, 0.0190, 0.0250)] // a tenth of the volume unknown: twice the risk, as documented
    public void At_the_bound_as_many_are_overfilled_as_the_risk_says(
        double level,
        double deviation,
        double marks,
        double marksDeviation,
        double risk,
        double least,
        double most
    )
    {
        var topUp = OilTopUp.Of(new(level, deviation), 1, new(new(marks), new(marksDeviation)), risk);
        var random = new Random(640);
        const int draws = 400_000;
        var over = 0;
        for (var i = 0; i < draws; i++)
        {
            var between = marks + marksDeviation * Draw(random);
            if (level + deviation * Draw(random) + topUp.Add.Litres / between > 1)
                over++;
        }
        Assert.InRange(over / (double)draws, least, most);
        Assert.Equal(risk, topUp.OverfillProbability, 1e-9);
    }

    [Property(MaxTest = 1000)]
    public void Topping_up_never_takes_more_than_the_risk_or_the_target(uint a, uint b, uint c, uint d)
    {
        var level = new OilLevel(Chance.Between(-0.5, 1.2, a), Chance.Between(0, 0.3, b));
        // up to 80 % of the volume: beyond the deviation at which q turns negative
        var marks = new MarkVolume(new(0.5), new(Chance.Between(0, 0.4, c)));
        var risk = Chance.Between(0.001, 0.5, d);
        var topUp = OilTopUp.Of(level, 0.8, marks, risk);
        Assert.True(topUp.Add.Litres >= 0);
        Assert.True(topUp.LevelAfter <= Math.Max(0.8, level.Value) + 1e-12);
        Assert.True(topUp.Add.Litres == 0 || topUp.OverfillProbability <= risk + 1e-9);
    }

    [Fact]
    public void An_exact_reading_is_filled_to_the_target()
    {
        var topUp = OilTopUp.Of(new(0.2, 0), 1, new(new(0.5), new(0)));
        Assert.Equal(0.4, topUp.Add.Litres, 1e-12);
        Assert.Equal(0, topUp.OverfillProbability);
    }

    [Fact]
    public void At_the_high_mark_nothing_is_added_and_above_it_is_overfilled()
    {
        Assert.Equal(0, OilTopUp.Of(new(1, 0), 1, new(new(0.5), new(0))).Add.Litres);
        Assert.Equal(0, OilTopUp.Of(new(1, 0), 1, new(new(0.5), new(0))).OverfillProbability);
        var above = OilTopUp.Of(new(1.2, 0), 1, new(new(0.5), new(0)));
        Assert.Equal((0, 1), (above.Add.Litres, above.OverfillProbability));
    }

    private static FirstFill Fill(double retained, double deviation, double target = 0.75, double risk = 0.01) =>
        OilFirstFill.Of(
            new(new(3.4), new(0.04), new(0.2), true, new(retained), new(deviation)),
            new Volume(0.5),
            target,
            risk
        );

    // Oracle: the room up to the high mark drawn at random (seeded)
    [Fact]
    public void The_first_dose_to_the_high_mark_overfills_as_often_as_the_risk_says()
    {
        var dose = Fill(0.1, 0.05, 1).FirstDose.Litres;
        var random = new Random(3);
        var over = 0;
        for (var i = 0; i < 400_000; i++)
            if (dose > 3.4 + 0.04 * Draw(random) - (0.1 + 0.05 * Draw(random)))
                over++;
        Assert.Equal(0.01, over / 400_000.0, 0.001);
    }

    [Fact]
    public void A_dose_is_never_negative() => Assert.Equal(0, Fill(3.3, 0.2).FirstDose.Litres);

    [Fact]
    public void Contradicting_volumes_and_risks_out_of_bounds_are_a_bug_of_the_caller()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Fill(3.4, 0.05));
        Assert.Throws<ArgumentOutOfRangeException>(() => Fill(0.1, 0.05, risk: 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Fill(0.1, 0.05, risk: 0.6));
        Assert.True(Fill(0.1, 0.05, risk: 0.5).FirstDose.Litres > 0);
        Assert.Throws<ArgumentOutOfRangeException>(() => OilTopUp.Of(default, 1, new(new(1), default), 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => OilTopUp.Of(default, 1, new(new(1), default), 0.6));
    }
}
