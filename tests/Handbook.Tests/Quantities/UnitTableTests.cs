using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Tests;

public class UnitTableTests
{
    // NIST SP 811 (2008), appendix B.8: the factor to seven figures, as printed
    [Theory]
    [InlineData("lbf·ft", 1.355818, 5e-7)]
    [InlineData("lbf·in", 0.1129848, 5e-8)]
    [InlineData("psi", 6.894757, 5e-7)]
    [InlineData("US qt", 0.9463529, 5e-8)] // from memory
    [InlineData("imp qt", 1.136523, 6e-7)] // from memory
    [InlineData("US fl oz", 0.02957353, 5e-9)] // from memory
    [InlineData("lbf", 4.448222, 5e-7)] // from memory
    [InlineData("lb", 453.5924, 5e-5)] // from memory
    [InlineData("lbf/in", 0.1751268, 5e-8)] // from memory
    // printed in bold there: exact
    [InlineData("kgf·m", 9.80665, 1e-15)]
    [InlineData("bar", 100, 1e-13)]
    [InlineData("in", 25.4, 1e-14)]
    [InlineData("mi", 1_609_344, 1e-9)]
    [InlineData("mph", 1.609344, 1e-15)]
    public void Factor_to_the_base_unit(string unit, double factor, double halfDigit) =>
        Assert.Equal(factor, UnitTable.Named(unit).Factor, halfDigit);

    // NIST SP 811 (2008), B.8: t/°C = (t/°F − 32)/1.8
    [Theory]
    [InlineData(32, 0)]
    [InlineData(212, 100)]
    [InlineData(-40, -40)]
    public void Fahrenheit_has_another_zero(double fahrenheit, double celsius) =>
        Assert.Equal(celsius, UnitTable.Named("°F").ToBase(fahrenheit), 1e-12);
}
