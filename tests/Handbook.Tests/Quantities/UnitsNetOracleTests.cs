using UnitsNet.Units;
using Witnessmark.Handbook.Quantities;
using Net = UnitsNet;

namespace Witnessmark.Handbook.Tests.Quantities;

/// <summary>Every unit that UnitsNet 5.75.1 knows too, against its factors.</summary>
public class UnitsNetOracleTests
{
    public static TheoryData<string, Enum, Enum> Known =>
        new()
        {
            { "%", RatioUnit.Percent, RatioUnit.DecimalFraction },
            { "mm", LengthUnit.Millimeter, LengthUnit.Millimeter },
            { "in", LengthUnit.Inch, LengthUnit.Millimeter },
            { "m", LengthUnit.Meter, LengthUnit.Millimeter },
            { "km", LengthUnit.Kilometer, LengthUnit.Millimeter },
            { "mi", LengthUnit.Mile, LengthUnit.Millimeter },
            { "mm²", AreaUnit.SquareMillimeter, AreaUnit.SquareMillimeter },
            { "µm²", AreaUnit.SquareMicrometer, AreaUnit.SquareMillimeter },
            { "L", VolumeUnit.Liter, VolumeUnit.Liter },
            { "mL", VolumeUnit.Milliliter, VolumeUnit.Liter },
            { "US qt", VolumeUnit.UsQuart, VolumeUnit.Liter },
            { "imp qt", VolumeUnit.ImperialQuart, VolumeUnit.Liter },
            { "US fl oz", VolumeUnit.UsOunce, VolumeUnit.Liter },
            { "deg", AngleUnit.Degree, AngleUnit.Radian },
            { "N·m", TorqueUnit.NewtonMeter, TorqueUnit.NewtonMeter },
            { "lbf·ft", TorqueUnit.PoundForceFoot, TorqueUnit.NewtonMeter },
            { "lbf·in", TorqueUnit.PoundForceInch, TorqueUnit.NewtonMeter },
            { "kgf·m", TorqueUnit.KilogramForceMeter, TorqueUnit.NewtonMeter },
            { "kN", ForceUnit.Kilonewton, ForceUnit.Newton },
            { "lbf", ForceUnit.PoundForce, ForceUnit.Newton },
            { "bar", PressureUnit.Bar, PressureUnit.Kilopascal },
            { "psi", PressureUnit.PoundForcePerSquareInch, PressureUnit.Kilopascal },
            { "°F", TemperatureUnit.DegreeFahrenheit, TemperatureUnit.DegreeCelsius },
            { "mph", SpeedUnit.MilePerHour, SpeedUnit.KilometerPerHour },
            { "min", DurationUnit.Minute, DurationUnit.Second },
            { "day", DurationUnit.Day, DurationUnit.Second },
            { "mΩ", ElectricResistanceUnit.Milliohm, ElectricResistanceUnit.Ohm },
            { "lbf/in", ForcePerLengthUnit.PoundForcePerInch, ForcePerLengthUnit.NewtonPerMillimeter },
            { "kg", MassUnit.Kilogram, MassUnit.Gram },
            { "lb", MassUnit.Pound, MassUnit.Gram },
            { "1/min", FrequencyUnit.CyclePerMinute, FrequencyUnit.Hertz },
            { "turn", RatioUnit.DecimalFraction, RatioUnit.DecimalFraction },
        };

    // The oracle writes these two factors with twelve and ten figures; all others agree to the last
    private static double Printed(string symbol) =>
        symbol switch
        {
            "US fl oz" => 2e-12,
            "lbf/in" => 2e-9,
            _ => 1e-14,
        };

    [Theory]
    [MemberData(nameof(Known))]
    public void A_unit_has_the_factor_and_offset_of_the_oracle(string symbol, Enum unit, Enum baseUnit)
    {
        foreach (var value in (double[])[0, 1, 37.5, 1234])
        {
            var theirs = Net.UnitConverter.Convert(value, unit, baseUnit);
            Assert.Equal(theirs, UnitTable.Named(symbol).ToBase(value), Printed(symbol) * (1 + Math.Abs(theirs)));
        }
    }

    [Fact]
    public void What_the_oracle_does_not_cover_is_a_base_unit_or_a_kind_it_does_not_know()
    {
        var covered = Known.Select(row => row.Data.Item1).ToHashSet();
        var left = UnitTable.All.Where(u => !covered.Contains(u.Symbol) && (u.Factor != 1 || u.Offset != 0));
        Assert.Empty(left.Select(u => u.Symbol));
    }
}
