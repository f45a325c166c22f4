using FsCheck.Xunit;
using Witnessmark.Handbook.Quantities;
using Witnessmark.Handbook.Tyres;

namespace Witnessmark.Handbook.Tests.Tyres;

public class TyrePressureTests
{
    private static readonly Pressure Sea = TyrePressure.StandardAtmosphere;

    private static double In(string unit, Pressure pressure) => UnitTable.Named(unit).FromBase(pressure.Kilopascals);

    private static Pressure Psi(double value) => new(UnitTable.Named("psi").ToBase(value));

    private static Temperature Fahrenheit(double value) => new(UnitTable.Named("°F").ToBase(value));

    // A public table reckoned with 14.7 psi and °F + 460, printed to 0.1 psi (read): 20 psi at 70 °F
    [Theory]
    [InlineData(50, 18.7)]
    [InlineData(130, 23.9)]
    public void Pressures_of_a_printed_table(double fahrenheit, double psi) =>
        Assert.Equal(
            psi,
            In("psi", TyrePressure.At(Psi(20), Fahrenheit(70), Fahrenheit(fahrenheit), Psi(14.7))),
            tolerance: 0.05
        );

    // Gay-Lussac's law by hand: (250 + 101.325)·333.15/293.15 − 101.325
    [Fact]
    public void From_20_to_60_degrees() =>
        Assert.Equal(297.9379, TyrePressure.At(new(250), new(20), new(60), Sea).Kilopascals, 1e-3);

    // Oracle: pressure over temperature is the same before and after, both absolute
    [Property(MaxTest = 300)]
    public void Absolute_pressure_over_absolute_temperature_stays(uint p, uint from, uint to, uint outside)
    {
        var (gauge, t1, t2) = (Chance.Between(0, 500, p), Chance.Between(-40, 90, from), Chance.Between(-40, 90, to));
        var air = Chance.Between(60, 110, outside);
        var then = TyrePressure.At(new(gauge), new(t1), new(t2), new(air)).Kilopascals;
        Assert.Equal((gauge + air) / (t1 + 273.15), (then + air) / (t2 + 273.15), 1e-12);
    }

    [Fact]
    public void The_same_temperature_changes_nothing() =>
        Assert.Equal(230, TyrePressure.At(new(230), new(35), new(35), Sea).Kilopascals, 1e-12);

    [Fact]
    public void A_flat_tyre_that_cools_is_below_the_air_outside() =>
        Assert.True(TyrePressure.At(new(0), new(20), new(0), Sea).Kilopascals < 0);
}
