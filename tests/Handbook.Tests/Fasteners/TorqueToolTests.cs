using FsCheck.Xunit;
using Witnessmark.Handbook.Fasteners;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Tests.Fasteners;

public class TorqueToolTests
{
    private static Tool Tool(string id, double min, double max, double percent) =>
        new(id, new(min), new(max), new(percent / 100));

    private static string? Taken(double setting, params Tool[] tools) => TorqueTool.For(new(setting), tools).Value?.Id;

    // Oracle: every tool against every other, in the words of the rule
    [Property(MaxTest = 500)]
    public void No_other_tool_that_covers_is_better(uint setting, uint[] chances)
    {
        // Whole numbers, so that ties and bounds met exactly are common
        var tools = chances
            .Select(
                (c, i) =>
                {
                    var min = Math.Floor(Chance.Between(0, 20, c));
                    var max = min + Math.Ceiling(Chance.Between(1, 100, c * 31));
                    return Tool($"{i}", min, max, Math.Floor(Chance.Between(3, 7, c * 17)));
                }
            )
            .ToArray();
        var wanted = Math.Ceiling(Chance.Between(1, 60, setting));
        bool Covers(Tool t) =>
            wanted >= t.Min.NewtonMetres && wanted * 5 >= t.Max.NewtonMetres && wanted <= t.Max.NewtonMetres;
        bool Better(Tool a, Tool b) => a.Tolerance < b.Tolerance || (a.Tolerance == b.Tolerance && a.Max < b.Max);
        var answer = TorqueTool.For(new Torque(wanted), tools);
        if (answer.Refusal is not null)
            Assert.DoesNotContain(tools, Covers);
        else
        {
            Assert.True(Covers(answer.Certain));
            Assert.DoesNotContain(tools, t => Covers(t) && Better(t, answer.Certain));
        }
    }

    // ISO 6789: verified from 20 % of the maximum, however low the marks go
    [Theory]
    [InlineData(6, "D")]
    [InlineData(5.99, null)]
    [InlineData(30, "D")]
    [InlineData(30.01, null)]
    public void The_range_begins_at_a_fifth_of_the_maximum(double setting, string? taken) =>
        Assert.Equal(taken, Taken(setting, Tool("D", 0, 30, 6)));

    [Fact]
    public void The_lowest_mark_counts_when_it_is_above_a_fifth() => Assert.Null(Taken(9, Tool("E", 10, 40, 4)));

    [Fact]
    public void Tolerance_comes_before_size_and_the_list_decides_the_rest()
    {
        Assert.Equal("wide", Taken(20, Tool("small", 5, 25, 6), Tool("wide", 5, 60, 4)));
        Assert.Equal("small", Taken(20, Tool("wide", 5, 60, 4), Tool("small", 5, 25, 4)));
        Assert.Equal("first", Taken(20, Tool("first", 5, 25, 4), Tool("second", 4, 25, 4)));
    }

    [Fact]
    public void A_bound_met_in_another_unit_is_met()
    {
        var max = new Written(20, UnitTable.Named("lbf·ft")).In(UnitTable.Named("N·m")).Value;
        var setting = new Written(240, UnitTable.Named("lbf·in")).In(UnitTable.Named("N·m")).Value;
        Assert.Equal("A", Taken(setting, Tool("A", 1, max, 4)));
    }

    // A part of 10⁻⁹ of the setting, whatever its size
    [Theory]
    [InlineData(1000, 5e-10, "A")]
    [InlineData(1000, 2e-9, null)]
    [InlineData(0.001, 5e-10, "A")]
    [InlineData(0.001, 2e-9, null)]
    public void Beyond_a_bound_only_rounding_is_let_through(double max, double beyond, string? taken) =>
        Assert.Equal(taken, Taken(max * (1 + beyond), Tool("A", 0, max, 4)));

    [Fact]
    public void Without_a_tool_that_covers_it_is_refused() =>
        Assert.Equal("noToolCovers", TorqueTool.For(new(215), [Tool("E", 40, 210, 4)]).Refusal?.Key);
}
