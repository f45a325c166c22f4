using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Tests.Quantities;

public sealed class UnitSystemsTests
{
    [Theory]
    [InlineData("mm", "in")]
    [InlineData("km", "mi")]
    [InlineData("N·m", "lbf·ft")]
    [InlineData("L", "US qt")]
    [InlineData("kPa", "psi")]
    [InlineData("°C", "°F")]
    public void What_one_system_reads_the_other_gives_back(string metric, string customary)
    {
        Assert.Equal(customary, UnitSystems.Other(UnitTable.Named(metric), UnitSystem.UsCustomary)?.Symbol);
        Assert.Equal(metric, UnitSystems.Other(UnitTable.Named(customary), UnitSystem.Metric)?.Symbol);
        Assert.Null(UnitSystems.Other(UnitTable.Named(metric), UnitSystem.Metric));
        Assert.Null(UnitSystems.Other(UnitTable.Named(customary), UnitSystem.UsCustomary));
    }

    // An imperial quart is a fifth larger than a US one: it is read in either system, but never taken for one
    [Fact]
    public void An_imperial_quart_is_no_us_quart() =>
        Assert.Equal(
            ("US qt", "L"),
            (
                UnitSystems.Other(UnitTable.Named("imp qt"), UnitSystem.UsCustomary)?.Symbol,
                UnitSystems.Other(UnitTable.Named("imp qt"), UnitSystem.Metric)?.Symbol
            )
        );

    [Fact]
    public void Every_other_unit_measures_the_same()
    {
        foreach (var unit in UnitTable.All)
        foreach (var system in Enum.GetValues<UnitSystem>())
            if (UnitSystems.Other(unit, system) is { } other)
                Assert.Equal((unit.Dimension, true), (other.Dimension, other != unit));
        Assert.All(UnitTable.All, u => Assert.Null(UnitSystems.Other(u, UnitSystem.AsWritten)));
    }

    [Fact]
    public void A_system_goes_by_its_word() =>
        Assert.Equal(
            [UnitSystem.AsWritten, UnitSystem.Metric, UnitSystem.UsCustomary, null],
            ((string[])["as-written", "metric", "us", "imperial"]).Select(UnitSystems.Named)
        );
}
