using System.Globalization;
using FsCheck.Xunit;
using Witnessmark.Handbook.Electrics;

namespace Witnessmark.Handbook.Tests.Electrics;

/// <summary>Certified numbers: the published tables themselves, read beside the tests.</summary>
public class BatteryStateTests
{
    public static TheoryData<double, double> Army => Rows("battery-open-circuit-voltage.csv");

    public static TheoryData<double, double> Bci => Rows("battery-open-circuit-voltage-bci.csv");

    [Theory]
    [MemberData(nameof(Army))]
    public void A_row_of_the_army_table_comes_out_as_printed(double voltage, double charge) =>
        Assert.Equal(charge, Of(voltage).Charge.Value * 100, 1e-12);

    [Theory]
    [MemberData(nameof(Bci))]
    public void A_row_of_the_other_table_comes_out_beside_it(double voltage, double charge) =>
        Assert.Equal(charge, Of(voltage).Other.Value * 100, 1e-12);

    [Fact]
    public void Both_tables_are_whole()
    {
        Assert.Equal(5, Army.Count);
        Assert.Equal(5, Bci.Count);
    }

    // Halfway in volts is halfway in charge
    [Theory]
    [InlineData(11.85, 12.5)]
    [InlineData(12.1, 37.5)]
    [InlineData(12.3, 62.5)]
    [InlineData(12.5, 87.5)]
    public void Between_two_rows_it_is_linear(double voltage, double charge) =>
        Assert.Equal(charge, Of(voltage).Charge.Value * 100, 1e-9);

    // The table prints "11.7 or less" and "12.6 or more"
    [Theory]
    [InlineData(0, 0)]
    [InlineData(11.69, 0)]
    [InlineData(12.61, 1)]
    [InlineData(1e9, 1)]
    public void The_end_rows_hold_beyond_the_table(double voltage, double charge) =>
        Assert.Equal(charge, Of(voltage).Charge.Value);

    // 12.4 V is 75 %
    [Theory]
    [InlineData(12.4, 0, BatteryCall.Good)]
    [InlineData(12.399, 0, BatteryCall.Recharge)]
    [InlineData(12.6, 0.2, BatteryCall.Good)]
    [InlineData(12.6, 0.21, BatteryCall.Unproven)]
    [InlineData(12.3, 0.1, BatteryCall.Unproven)]
    [InlineData(12.3, 0.099, BatteryCall.Recharge)]
    public void The_meters_error_decides_what_is_proven(double voltage, double error, BatteryCall call) =>
        Assert.Equal(call, Of(voltage, error).Call);

    // 10 % of charge is about 80 mV between 25 and 100 %: a meter that errs by 1 % of 12.3 V leaves ± 15 %
    [Fact]
    public void A_meter_that_errs_by_one_per_cent_leaves_fifteen_per_cent_either_way()
    {
        var battery = Of(12.3, 0.12);
        Assert.Equal(0.15, battery.High.Value - battery.Charge.Value, 0.005);
        Assert.Equal(0.15, battery.Charge.Value - battery.Low.Value, 0.005);
    }

    [Property]
    public void More_volts_never_mean_less_charge(uint voltage, uint error)
    {
        var (v, e) = (Chance.Between(11, 13, voltage), Chance.Between(0, 0.3, error));
        var (lower, upper) = (Of(v, e), Of(v + 0.01, e));
        Assert.True(lower.Charge <= upper.Charge && lower.Other <= upper.Other);
        Assert.True(lower.Low <= lower.Charge && lower.Charge <= lower.High);
        Assert.True(lower.Charge.Value - lower.Other.Value is >= -1e-9 and < 0.16);
    }

    [Theory]
    [InlineData(180, null)]
    [InlineData(179.99, "notRested")]
    [InlineData(0, "notRested")]
    public void Rest_is_three_minutes(double seconds, string? key) =>
        Assert.Equal(key, BatteryState.From(new(12.6), new(seconds), default).Refusal?.Key);

    private static BatteryCharge Of(double voltage, double error = 0) =>
        BatteryState.From(new(voltage), new(7200), new(error)).Certain;

    private static TheoryData<double, double> Rows(string table) =>
        [
            .. File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Published", table))
                .Where(l => l.Length > 0 && l[0] != '#')
                .Skip(1)
                .Select(l => l.Split(','))
                .Select(c => (Number(c[1]), Number(c[2]))),
        ];

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
