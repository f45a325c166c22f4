using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Wording;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Tests.Wording;

/// <summary>Quantities for whoever reads other units, by the factors of NIST SP 811 (2008), B.8.</summary>
public sealed class NumeralsInUnitsTests
{
    private static readonly Tongue Us = Tongue.English.With(UnitSystem.UsCustomary);
    private static readonly Tongue Metric = Tongue.English.With(UnitSystem.Metric);

    [Fact]
    public void A_quantity_is_converted_and_stands_in_brackets_as_it_was_read()
    {
        var read = Numerals.WithUncertainty(50, 1.2, Unit("mm")); // 1.9685 in, 0.0472 in
        Assert.Equal("1.97 ± 0.05 in (50 ± 1.2 mm)", read.In(Us));
        Assert.Equal("50 ± 1.2 mm", read.In(Metric));
        Assert.Equal("50 ± 1.2 mm", read.ToString());
        Assert.Equal("50 ± 1.2 mm", read.AsWritten().In(Us));
    }

    [Fact]
    public void What_both_systems_share_stays_alone() => Assert.Equal("12.6 V", Numerals.With(12.6, Unit("V")).In(Us));

    [Fact]
    public void How_far_a_temperature_is_away_has_no_zero_of_the_scale()
    {
        Assert.Equal("194 °F (90 °C)", Numerals.With(90, Unit("°C")).In(Us));
        Assert.Equal("18 °F (10 °C)", Numerals.Apart(10, Unit("°C")).In(Us));
        Assert.Equal("194 ± 4 °F (90 ± 2 °C)", Numerals.WithUncertainty(90, 2, Unit("°C")).In(Us)); // 3.6
    }

    [Fact]
    public void A_tolerance_is_rounded_down() =>
        Assert.Equal("34.8 ± 2.1 psi (240 ± 15 kPa)", Numerals.PlusMinus(240, 15, Unit("kPa"), 4).In(Us)); // 2.1756

    [Theory]
    [InlineData("10000 km or 12 months", "6214 mi (10000 km) or 12 months")]
    [InlineData("1 month", "1 month")]
    [InlineData("600 mi", "600 mi")]
    [InlineData("when it squeaks", "when it squeaks")]
    public void How_often_something_is_done(string every, string us)
    {
        var often = new ScheduledWork(
            "chain-slack",
            every,
            new(OriginKind.Maker, "handbook p. 12"),
            new("chain-slack", null, null, null)
        ).Often;
        Assert.Equal(every, often.ToString());
        Assert.Equal(us, often.In(Us));
    }

    private static Unit Unit(string symbol) => UnitTable.Named(symbol);
}
