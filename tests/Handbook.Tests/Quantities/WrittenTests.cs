using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Tests;

/// <summary>Numbers with units as people and programs write them. <b>Source.</b> RFC 8259, section 6: the grammar of a number.</summary>
public class WrittenTests
{
    [Theory]
    [InlineData("50 mm", 50, "mm")]
    [InlineData("50mm", 50, "mm")]
    [InlineData("0.5 mm", 0.5, "mm")]
    [InlineData("0 mm", 0, "mm")]
    [InlineData("-0.25 mm", -0.25, "mm")]
    [InlineData("10 mm", 10, "mm")]
    [InlineData("2.3e-05 1/K", 2.3e-5, "1/K")]
    [InlineData("1E+3 N", 1000, "N")]
    [InlineData("1e3N", 1000, "N")]
    [InlineData("12.50 N·m", 12.5, "N·m")]
    public void A_number_of_JSON_and_a_unit_are_read(string text, double value, string unit)
    {
        Assert.Null(Written.Read(text, out var written));
        Assert.Equal((value, unit), (written.Value, written.Unit.Symbol));
    }

    [Theory]
    [InlineData("mm", "it does not begin with a number")]
    [InlineData("", "it does not begin with a number")]
    [InlineData("-", "it does not begin with a number")]
    [InlineData("- 5 mm", "it does not begin with a number")]
    [InlineData("+5 mm", "it does not begin with a number")]
    [InlineData(".5 mm", "it does not begin with a number")]
    [InlineData("5. mm", "it does not begin with a number")]
    [InlineData("5.", "it does not begin with a number")]
    [InlineData("05 mm", "it does not begin with a number")]
    [InlineData("-05 mm", "it does not begin with a number")]
    [InlineData("5", "the unit is missing")]
    [InlineData("5e3", "the unit is missing")]
    [InlineData("5 ", "the unit is missing")]
    [InlineData("5e", "\"e\" is not a unit")]
    [InlineData("5e+", "\"e+\" is not a unit")]
    [InlineData("5e-", "\"e-\" is not a unit")]
    [InlineData("5e+mm", "\"e+mm\" is not a unit")]
    [InlineData("5 furlong", "\"furlong\" is not a unit")]
    [InlineData("5,5 mm", "\",5 mm\" is not a unit")]
    [InlineData("1e999 mm", "the number is too large")]
    public void What_is_neither_is_said(string text, string why) => Assert.Equal(why, Written.Read(text, out _));

    // 25.4 mm in an inch is exact (NIST SP 811 (2008), B.8)
    [Fact]
    public void A_length_stands_in_another_unit_of_length_and_in_no_unit_of_mass()
    {
        Assert.Null(Written.Read("2 in", out var inches));
        Assert.Equal(50.8, inches.In(UnitTable.Named("mm")).Value, 1e-12);
        Assert.Equal("2 in", inches.ToString());
        Assert.Throws<ArgumentException>(() => inches.In(UnitTable.Named("kg")));
    }

    [Fact]
    public void Minus_zero_is_zero()
    {
        Assert.Null(Written.Read("-0 mm", out var zero));
        Assert.False(double.IsNegative(zero.Value));
    }
}
