using Witnessmark.Bench.Figures;

namespace Witnessmark.Bench.Tests.Figures;

public class PrintedNumberTests
{
    [Theory]
    [InlineData("13", 13, 0.5)]
    [InlineData("3.60", 3.6, 0.005)]
    [InlineData("-0.5", -0.5, 0.05)]
    [InlineData("½", 0.5, 0)]
    [InlineData("1¼", 1.25, 0)]
    [InlineData("1 1/4", 1.25, 0)]
    [InlineData("3/8", 0.375, 0)]
    public void Decimal_and_vulgar_fractions(string written, double value, double halfStep)
    {
        var number = PrintedNumber.Read(written)!.Value;
        Assert.Equal(value, number.Value, 1e-12);
        Assert.Equal(halfStep, number.HalfStep, 1e-12);
    }

    [Theory]
    [InlineData("")]
    [InlineData("thirteen")]
    [InlineData("1/0")]
    [InlineData("1,5")]
    [InlineData("+3")]
    [InlineData(".5")]
    [InlineData("1 3")]
    [InlineData("½½")]
    public void What_is_no_number(string written) => Assert.Null(PrintedNumber.Read(written));

    [Theory]
    [InlineData("1300 1/min", 1, "1/min")]
    [InlineData("1/2 in", 1, "in")]
    [InlineData("13–32 mm", 2, "mm")]
    [InlineData("3.60 US qt", 1, "US qt")]
    public void Numbers_end_where_the_unit_begins(string written, int numbers, string unit)
    {
        Assert.Null(PrintedQuantity.Read(written, numbers, null, out var quantity));
        Assert.Equal(unit, quantity!.Unit.Symbol);
    }
}
