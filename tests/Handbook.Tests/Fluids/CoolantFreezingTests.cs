using FsCheck.Xunit;
using Witnessmark.Handbook.Fluids;

namespace Witnessmark.Handbook.Tests.Fluids;

public class CoolantFreezingTests
{
    private static Glycol Named(string name) => name == "ethylene" ? Glycol.Ethylene : Glycol.Propylene;

    private static double Freezes(Glycol glycol, double percent) =>
        CoolantFreezing.Of(glycol, new(percent / 100)).Certain.FreezesAt.DegreesCelsius;

    public static TheoryData<string, double, double> Rows =>
        [
            .. PublishedRows
                .Of("glycol-freezing.csv")
                .Select(r => (r.Text("glycol"), r.Number("volume"), r.Number("freezesAt"))),
        ];

    // ASHRAE Handbook Fundamentals 2001, every row; printed to 0.1 K, which the rows themselves give back exactly
    [Theory]
    [MemberData(nameof(Rows))]
    public void Every_row_is_given_back(string glycol, double volume, double freezesAt) =>
        Assert.Equal(freezesAt, Freezes(Named(glycol), volume), 1e-9);

    [Fact]
    public void Both_tables_are_whole() =>
        Assert.Equal(
            (45, 45),
            (Rows.Count(r => r.Data.Item1 == "ethylene"), Rows.Count(r => r.Data.Item1 == "propylene"))
        );

    // Melinder, IIR 2010: every row that has a mass fraction of ASHRAE's
    [Fact]
    public void The_second_source_gives_back_its_rows_by_mass()
    {
        var volumes = PublishedRows
            .Of("glycol-freezing.csv")
            .ToDictionary(r => (r.Text("glycol"), r.Number("mass")), r => r.Number("volume"));
        var met = 0;
        foreach (var row in PublishedRows.Of("glycol-freezing-melinder.csv"))
            if (volumes.TryGetValue((row.Text("glycol"), row.Number("mass")), out var volume))
            {
                var point = CoolantFreezing.Of(Named(row.Text("glycol")), new(volume / 100)).Certain;
                Assert.Equal(row.Number("freezesAt"), point.Elsewhere!.Value.DegreesCelsius, 1e-9);
                met++;
            }
        Assert.Equal(23, met);
    }

    // As far as the two sources lie apart row by row, and as the page says
    [Property(MaxTest = 500)]
    public void Two_sources_lie_as_far_apart_as_documented(uint a, bool ethylene)
    {
        var glycol = ethylene ? Glycol.Ethylene : Glycol.Propylene;
        var point = CoolantFreezing.Of(glycol, new(Chance.Between(0.15, 0.53, a))).Certain;
        var lower = point.FreezesAt.DegreesCelsius - point.Elsewhere!.Value.DegreesCelsius;
        Assert.InRange(lower, ethylene ? 0 : -0.53, ethylene ? 2.54 : 0.53);
    }

    [Property(MaxTest = 500)]
    public void More_glycol_freezes_later_and_a_value_lies_between_its_rows(uint a, bool ethylene)
    {
        var glycol = ethylene ? Glycol.Ethylene : Glycol.Propylene;
        var percent = Chance.Between(0, 57, a);
        Assert.True(Freezes(glycol, percent + 0.5) < Freezes(glycol, percent));
        var below = Rows.Last(r => Named(r.Data.Item1) == glycol && r.Data.Item2 <= percent).Data.Item3;
        var above = Rows.First(r => Named(r.Data.Item1) == glycol && r.Data.Item2 > percent).Data.Item3;
        Assert.InRange(Freezes(glycol, percent), above, below);
    }

    [Theory]
    [InlineData(Glycol.Ethylene, 57.8, true)]
    [InlineData(Glycol.Ethylene, 57.80000000001, true)] // a rounding
    [InlineData(Glycol.Ethylene, 57.801, false)]
    [InlineData(Glycol.Propylene, 60, true)]
    [InlineData(Glycol.Propylene, 60.001, false)]
    [InlineData(Glycol.Propylene, 100, false)]
    public void The_tables_end(Glycol glycol, double percent, bool holds) =>
        Assert.Equal(holds ? null : "outsideTable", CoolantFreezing.Of(glycol, new(percent / 100)).Refusal?.Key);

    [Theory]
    [InlineData(Glycol.Ethylene, 53.7, true)]
    [InlineData(Glycol.Ethylene, 54, false)]
    [InlineData(Glycol.Propylene, 14.5, true)]
    [InlineData(Glycol.Propylene, 14, false)]
    public void The_second_source_is_left_out_where_it_has_no_rows(Glycol glycol, double percent, bool there) =>
        Assert.Equal(there, CoolantFreezing.Of(glycol, new(percent / 100)).Certain.Elsewhere is not null);
}
