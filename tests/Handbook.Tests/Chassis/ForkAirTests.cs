using FsCheck.Xunit;
using Witnessmark.Handbook.Chassis;

namespace Witnessmark.Handbook.Tests.Chassis;

/// <summary>Checked against the pressure integrated over the travel, and against one tube of air.</summary>
public class ForkAirTests
{
    private static readonly ForkLeg Leg = new(new(43), new(38), new(120), new(0.025), new(130));
    private static readonly ForkSpring Spring = new(new(8.5), new(15));
    private static double Area => Math.PI / 4 * 43 * 43;

    // p₂ = p₁·(L/(L − x))ⁿ, absolute, of an air column L 140 mm pushed in by x 100 mm (textbook, recomputed): 354.6 kPa at n 1, 585.3 kPa at n 1.4
    [Theory]
    [InlineData(1, 354.6)]
    [InlineData(1.4, 585.3)]
    public void One_column_of_air(double exponent, double pressure)
    {
        var level = 10 * 43.0 * 43 / (38 * 38); // air above the oil at full compression as long as 10 mm of the outer tube
        var leg = Leg with { OilLevel = new(level), SpringVolume = new(0) };
        var air = ForkAir.At(leg, new(100), Spring, exponent, new(101.325)).Certain.Air;
        Assert.Equal(pressure, 101.325 + air.Newtons / Area * 1000, 0.05);
    }

    [Property(MaxTest = 50)]
    public void Air_is_what_integrating_the_pressure_gives(uint level, uint volume, uint place, uint exponent)
    {
        var leg = Leg with
        {
            OilLevel = new(Chance.Between(60, 180, level)),
            SpringVolume = new(Chance.Between(0, 0.05, volume)),
        };
        var (x, n) = (Chance.Between(0, 130, place), Chance.Between(1, 1.4, exponent));
        var forces = ForkAir.At(leg, new(x), Spring, n, new(98)).Certain;
        var pressure = Pressure(leg, x, n, 98);
        Assert.Equal((pressure - 98) * Area / 1000, forces.Air.Newtons, 1e-5);
        var (behind, before) = (At(leg, Math.Max(x - 1e-3, 0), n), At(leg, Math.Min(x + 1e-3, 130), n));
        var step = Math.Min(x + 1e-3, 130) - Math.Max(x - 1e-3, 0);
        Assert.Equal(
            (before - behind) / step,
            forces.AirRate.NewtonsPerMillimetre,
            1e-3 * forces.AirRate.NewtonsPerMillimetre
        );
    }

    [Fact]
    public void Spring_and_total_are_of_one_leg_and_of_both()
    {
        var forces = ForkAir.At(Leg, new(80), Spring, 1.3, new(101.325)).Certain;
        Assert.Equal(8.5 * 95, forces.Spring.Newtons, 1e-12);
        Assert.Equal(2 * (forces.Air.Newtons + forces.Spring.Newtons), forces.Total.Newtons, 1e-12);
    }

    [Property]
    public void Deeper_faster_and_with_more_oil_it_pushes_harder(uint place, uint exponent)
    {
        var (x, n) = (Chance.Between(1, 129, place), Chance.Between(1, 1.39, exponent));
        var force = At(Leg, x, n);
        Assert.True(At(Leg, x + 1, n) > force);
        Assert.True(At(Leg, x, n + 0.01) > force);
        Assert.True(At(Leg with { OilLevel = new(119) }, x, n) > force);
        Assert.True(At(Leg with { SpringVolume = new(0.026) }, x, n) > force);
    }

    // Equilibrium of one leg under 480 N, slow air, by bisection: oil level is a tool for the end of the travel, not for the sag
    [Fact]
    public void Ten_millimetres_of_oil_move_the_sag_little_and_the_end_much()
    {
        double Sag(double level)
        {
            var (low, high) = (0.0, 130.0);
            for (var i = 0; i < 60; i++)
            {
                var middle = (low + high) / 2;
                var forces = ForkAir
                    .At(Leg with { OilLevel = new(level) }, new(middle), Spring, 1, new(101.325))
                    .Certain;
                (low, high) = forces.Total.Newtons < 2 * 480 ? (middle, high) : (low, middle);
            }
            return low;
        }
        double End(double level) =>
            ForkAir.At(Leg with { OilLevel = new(level) }, new(130), Spring, 1.3, new(101.325)).Certain.Air.Newtons;
        Assert.Equal(38, Sag(120), 0.5);
        Assert.Equal(0.2, Sag(120) - Sag(110), 0.05);
        Assert.Equal(50, End(110) - End(120), 0.5);
    }

    // 38 mm bore: 1134.115 mm² · 22.0436 mm is 25 mL
    [Fact]
    public void No_air_left_at_the_end_of_the_travel_is_refused_wherever_the_fork_stands()
    {
        var full = 0.025 * 1e6 / (Math.PI / 4 * 38 * 38);
        Assert.Equal("noAir", Refused(full - 1e-6));
        Assert.Null(Refused(full + 1e-6));
        Assert.Equal(
            "noAir",
            ForkAir.At(Leg with { OilLevel = new(0), SpringVolume = new(0) }, new(0), Spring, 1, new(100)).Refusal!.Key
        );
    }

    [Fact]
    public void Both_ends_of_the_travel_belong_to_it()
    {
        Assert.Equal(0, At(Leg, 0, 1.3), 1e-12);
        Assert.Equal(387.886 * 98 / 101.325, At(Leg, 130, 1.3), 1e-3); // the force grows with the atmosphere
        Assert.Throws<ArgumentOutOfRangeException>(() => At(Leg, 130.001, 1.3));
        Assert.Throws<ArgumentOutOfRangeException>(() => At(Leg, -0.001, 1.3));
    }

    [Theory]
    [InlineData(0.999)]
    [InlineData(1.401)]
    public void An_exponent_that_air_cannot_have_is_a_bug_of_the_caller(double exponent) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => At(Leg, 10, exponent));

    private static string? Refused(double level) =>
        ForkAir.At(Leg with { OilLevel = new(level) }, new(0), Spring, 1.3, new(101.325)).Refusal?.Key;

    private static double At(ForkLeg leg, double position, double exponent) =>
        ForkAir.At(leg, new(position), Spring, exponent, new(98)).Certain.Air.Newtons;

    // Classical Runge-Kutta on dp/dx = n·p·A/V; nothing of p·Vⁿ = const is used
    private static double Pressure(ForkLeg leg, double x, double n, double atmosphere)
    {
        const int Steps = 4000;
        var compressed = Math.PI / 4 * 38 * 38 * leg.OilLevel.Millimetres - leg.SpringVolume.Litres * 1e6;
        double Slope(double s, double p) => n * p * Area / (compressed + Area * (130 - s));
        var (pressure, step) = (atmosphere, x / Steps);
        for (var i = 0; i < Steps; i++)
        {
            var s = i * step;
            var k1 = Slope(s, pressure);
            var k2 = Slope(s + step / 2, pressure + step / 2 * k1);
            var k3 = Slope(s + step / 2, pressure + step / 2 * k2);
            var k4 = Slope(s + step, pressure + step * k3);
            pressure += step / 6 * (k1 + 2 * k2 + 2 * k3 + k4);
        }
        return pressure;
    }
}
