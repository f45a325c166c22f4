using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Tests;

public class UnitTableTests
{
    // NIST SP 811 (2008), appendix B.8: the factor to seven figures, as printed
    [Theory]
    [InlineData("lbf·ft", 1.355818, 5e-7)]
    [InlineData("lbf·in", 0.1129848, 5e-8)]
    [InlineData("psi", 6.894757, 5e-7)]
    [InlineData("US qt", 0.9463529, 5e-8)]
    [InlineData("imp qt", 1.136523, 6e-7)]
    public void Factor_to_the_base_unit(string unit, double factor, double halfDigit) =>
        Assert.Equal(factor, UnitTable.Named(unit).Factor, halfDigit);
}
