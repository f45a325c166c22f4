using System.Globalization;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Tests.Quantities;

public sealed class ConvertedNumberTests
{
    // NIST SP 811 (2008), B.7.2: "36 ft × 0.3048 m/ft = 10.9728 m = 11.0 m", three digits since 11 would lose what 36 says
    [Fact]
    public void Thirty_six_feet_are_eleven_point_nought_metres() =>
        Assert.Equal("11.0", ConvertedNumber.Of("36", new("ft", Dimension.Length, 304.8), UnitTable.Named("m")));

    // NIST voluntary product standard PS 20-20, table 3: 7-1/2 in = 190 mm, the exact 190.5 rounded to the even digit (SP 811, B.7.1)
    [Fact]
    public void Half_goes_to_the_even_digit() => Assert.Equal("190", Of("7.5", "in", "mm"));

    // factors by hand from NIST SP 811, B.8; digits by SP 1038, 4.4
    [Theory]
    [InlineData("35", "mm", "in", "1.38")] // 1.37795
    [InlineData("13", "mm", "in", "0.51")] // 0.51181
    [InlineData("0.35", "mm", "in", "0.0138")] // 0.013780
    [InlineData("1.6", "mm", "in", "0.063")] // 0.062992
    [InlineData("110", "N·m", "lbf·ft", "81.1")] // 81.1318, first digit 8 is not smaller than 1: three digits
    [InlineData("22", "N·m", "lbf·ft", "16.2")] // 16.2264
    [InlineData("250", "kPa", "psi", "36.3")] // 36.2594
    [InlineData("36", "psi", "kPa", "248")] // 248.211
    [InlineData("2.5", "bar", "psi", "36")] // 36.2594
    [InlineData("3.4", "L", "US qt", "3.6")] // 3.59274
    [InlineData("22380", "km", "mi", "13906")] // 13906.28, the odometer's own decimals
    [InlineData("1.5", "mi", "km", "2.4")] // 2.41402
    [InlineData("90", "°C", "°F", "194")]
    [InlineData("-3", "°C", "°F", "27")] // 26.6
    [InlineData("-0.25", "mm", "in", "-0.0098")] // -0.0098425
    [InlineData("0", "mm", "in", "0")]
    public void Keeps_the_digits_that_it_had(string digits, string from, string to, string converted) =>
        Assert.Equal(converted, Of(digits, from, to));

    // ASME A112.18.1-2018, A.2 e): maximums and minimums are rounded so that they do not violate the original limits
    [Theory]
    [InlineData("13", "32", "mm", "in", "0.52", "1.25")] // 0.51181 and 1.25984
    [InlineData("1.5", "2", "mm", "in", "0.060", "0.078")] // 0.059055 and 0.078740
    [InlineData("250", "290", "kPa", "psi", "36.3", "42.0")] // 36.2594 and 42.0610
    [InlineData("25.4", "50.8", "mm", "in", "1.000", "2.000")] // exact: nothing to round
    public void Ends_of_a_limit_stay_inside_it(
        string min,
        string max,
        string from,
        string to,
        string lower,
        string upper
    )
    {
        var (a, b) = (UnitTable.Named(from), UnitTable.Named(to));
        Assert.Equal(
            (lower, upper),
            (ConvertedNumber.Of(min, a, b, RoundedTo.Above), ConvertedNumber.Of(max, a, b, RoundedTo.Below))
        );
    }

    [Fact]
    public void A_difference_of_temperatures_has_no_zero_of_the_scale() =>
        Assert.Equal("5", ConvertedNumber.Apart("3", UnitTable.Named("°C"), UnitTable.Named("°F"))); // 5.4

    [Fact]
    public void A_number_that_is_nobodys_reading_is_no_fault() =>
        Assert.Equal(
            25.4e30,
            double.Parse(Of("1" + new string('0', 30), "in", "mm"), CultureInfo.InvariantCulture),
            1e17
        );

    [Fact]
    public void There_and_back_it_is_the_same_to_its_own_last_digit()
    {
        var chance = new Random(36);
        foreach (var (metric, customary) in Pairs)
            for (var i = 0; i < 400; i++)
            {
                var value = Math.Round(Math.Pow(10, chance.NextDouble() * 4 - 1), 2);
                var digits = value.ToString("0.##", CultureInfo.InvariantCulture);
                var there = ConvertedNumber.Of(digits, metric, customary);
                var back = new Written(double.Parse(there, CultureInfo.InvariantCulture), customary).In(metric).Value;
                var step = Math.Pow(10, -(digits.Contains('.') ? digits.Length - digits.IndexOf('.') - 1 : 0));
                // half a last digit of the converted one, whose first digit is at least half as large
                Assert.True(
                    Math.Abs(back - value) <= 1.0001 * step,
                    $"{digits} {metric} = {there} {customary} = {back} {metric}"
                );
            }
    }

    private static IEnumerable<(Unit, Unit)> Pairs =>
        from unit in UnitTable.All
        where unit.Dimension != Dimension.Temperature
        let other = UnitSystems.Other(unit, UnitSystem.UsCustomary)
        where other is not null
        select (unit, other);

    private static string Of(string digits, string from, string to) =>
        ConvertedNumber.Of(digits, UnitTable.Named(from), UnitTable.Named(to));
}
