using FsCheck.Xunit;
using Witnessmark.Handbook.Fluids;

namespace Witnessmark.Handbook.Tests.Fluids;

public class OilViscosityTests
{
    private static Answer<ViscosityLine> At(double at40, double at100, double temperature) =>
        OilViscosity.At(new(at40), new(at100), new(temperature));

    private static double Value(double at40, double at100, double temperature) =>
        At(at40, at100, temperature).Certain.Viscosity!.Value.SquareMillimetresPerSecond;

    // ASTM D341, equation 2 holds of every viscosity; its published inverse, equation 3, is a fit good to some 1e-3
    [Property(MaxTest = 500)]
    public void The_line_passes_through_its_points(uint a, uint b)
    {
        var at100 = Math.Exp(Chance.Between(Math.Log(0.3), Math.Log(80), a));
        var at40 = at100 * Chance.Between(1.5, 15, b);
        var fit = at100 < 2 ? 1e-3 : 1e-9;
        Assert.Equal(at40, Value(at40, at100, 40), Math.Max(fit, 1e-9 * at40));
        Assert.Equal(at100, Value(at40, at100, 100), fit);
    }

    // A hotter oil is thinner; an answer taken as a new point gives the same line
    [Property(MaxTest = 500)]
    public void Viscosity_falls_with_warmth_all_along_the_line(uint a, uint b, uint c)
    {
        var at100 = Chance.Between(3, 30, a);
        var at40 = at100 * Chance.Between(3, 12, b);
        var temperature = Chance.Between(0, 150, c);
        Assert.True(Value(at40, at100, temperature) > Value(at40, at100, temperature + 1));
    }

    // Oracle: the textbook form log log(ν + 0.7) drawn as a straight line over log T, read at a third point
    [Property(MaxTest = 300)]
    public void Three_points_lie_on_one_straight_line(uint a, uint b, uint c)
    {
        var at100 = Chance.Between(4, 30, a);
        var at40 = at100 * Chance.Between(3, 12, b);
        var temperature = Chance.Between(-10, 120, c);
        double Up(double v) => Math.Log(Math.Log(v + 0.7));
        var share = Math.Log((temperature + 273.15) / 313.15) / Math.Log(373.15 / 313.15);
        var expected = Math.Exp(Math.Exp(Up(at40) + share * (Up(at100) - Up(at40)))) - 0.7;
        Assert.Equal(1, Value(at40, at100, temperature) / expected, 1e-9);
    }

    [Theory]
    [InlineData(-70, true)]
    [InlineData(-70.0000000001, true)] // a rounding, as of -94 °F
    [InlineData(-70.001, false)]
    [InlineData(340, true)]
    [InlineData(340.0000000001, true)]
    [InlineData(340.001, false)]
    public void The_charts_have_two_ends(double temperature, bool holds)
    {
        // so thin in the cold and so thick in the heat that only the temperature can be outside
        var answer = At(8, 3.2, temperature);
        Assert.Equal(holds ? null : "outsideRange", answer.Refusal?.Key);
        Assert.Equal(holds, answer.Value!.Viscosity is not null);
    }

    [Theory]
    [InlineData(0.3, 0.21, true)]
    [InlineData(0.3, 0.2099, false)]
    [InlineData(2e7, 1000, true)]
    [InlineData(2.001e7, 1000, false)]
    public void The_charts_have_a_thinnest_and_a_thickest(double at40, double at100, bool holds) =>
        Assert.Equal(holds ? null : "outsideRange", At(at40, at100, 80).Refusal?.Key);

    [Fact]
    public void A_line_that_leaves_the_chart_is_still_a_line()
    {
        var answer = At(2000, 80, -60);
        Assert.Equal("outsideRange", answer.Refusal?.Key);
        Assert.Null(answer.Value!.Viscosity);
        Assert.True(answer.Value.Slope > 0);
    }

    // Below 2 mm²/s the plain form is wrong by more than the fit: at 0.8 mm²/s by 0.04
    [Fact]
    public void The_full_form_is_used_below_2()
    {
        var line = At(1.6, 0.8, 70).Certain;
        Assert.Equal(1.08828, line.Viscosity!.Value.SquareMillimetresPerSecond, 1e-4);
        Assert.Equal(3.77429, line.Slope, 1e-4);
    }

    [Theory]
    [InlineData(10, 10)]
    [InlineData(10, 11)]
    public void An_oil_that_does_not_thin_is_refused(double at40, double at100)
    {
        var answer = At(at40, at100, 80);
        Assert.Equal("notThinning", answer.Refusal?.Key);
        Assert.Null(answer.Value);
    }
}
