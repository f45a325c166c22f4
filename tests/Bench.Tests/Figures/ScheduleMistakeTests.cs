using Witnessmark.Bench.Tests.Book;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Tests.Figures;

public class ScheduleMistakeTests
{
    private const string Sheet = "sheets/fell-640.toml";
    private const string Every = "every = \"10000 km or 12 months\"";

    [Theory]
    [InlineData("every = \"10000 km or 5000 km\"", "\"5000 km\" beside another of its kind", 9)]
    [InlineData("every = \"12 months or 6 months\"", "\"6 months\" beside another of its kind", 9)]
    [InlineData("every = \"1.5 months\"", "\"1.5 months\"", 9)]
    [InlineData("every = \"1201 months\"", "\"1201 months\"", 9)]
    [InlineData("every = \"0 km\"", "\"0 km\"", 9)]
    [InlineData("every = \"10 N·m\"", "\"10 N·m\"", 9)]
    [InlineData("every = \"10000 km\"\nfirst = \"0 km\"", "\"0 km\"", 9)]
    [InlineData("every = \"10000 km\"\nfirst = \"12 months\"", "\"12 months\" has the wrong kind of unit", 9)]
    [InlineData("every = \"10000 km\"\nfrist = \"1000 km\"", "unknown key \"frist\"", 1)]
    public void A_slip_is_told_where_it_stands(string written, string found, int column)
    {
        var mistake = Assert.Single(DemoFiles.MistakesWith(Sheet, Every, written));
        Assert.Equal((found, column), (mistake.Found, mistake.Column));
        Assert.Equal(DemoFiles.LineOf(Sheet, Every) + (written.Contains('\n') ? 1 : 0), mistake.Line);
    }

    [Fact]
    public void A_point_stands_once_with_its_distance_and_its_months_together()
    {
        var mistake = Assert.Single(
            DemoFiles.MistakesWith(Sheet, "point = \"chain-slack\"\nevery", "point = \"oil-filter\"\nevery")
        );
        Assert.Equal("\"oil-filter\" a second time", mistake.Found);
    }

    [Fact]
    public void Distance_months_and_the_first_time_are_counted_by()
    {
        var schedule = DemoFiles.Bench.Newest("fell-640")!.Schedule;
        var oil = schedule.Single(w => w.Point == "oil-filter").Rule;
        Assert.Equal((new Length(1e10), 12, null), (oil.EveryDistance!.Value, oil.EveryMonths, oil.FirstAt));
        Assert.Equal(new Length(2.4e10), schedule.Single(w => w.Point == "valve-clearances").Rule.FirstAt);
    }
}
