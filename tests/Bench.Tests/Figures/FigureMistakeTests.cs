using Witnessmark.Bench.Tests.Book;

namespace Witnessmark.Bench.Tests.Figures;

public class FigureMistakeTests
{
    private const string Sheet = "sheets/fell-640.toml";
    private const string Slack = "range = \"13 to 32 mm\"";

    // the value begins after `range = `, in column 9
    [Theory]
    [InlineData("range = \"32 to 13 mm\"", "the ends are swapped or equal")]
    [InlineData("range = \"13 to 32 mn\"", "\"mn\" is not a unit")]
    [InlineData("range = \"13 to 32\"", "the unit is missing")]
    [InlineData("range = \"13 mm\"", "two numbers with \"to\" between them are needed")]
    [InlineData("range = \"some mm\"", "it does not begin with a number")]
    [InlineData("range = \"13 to 3..2 mm\"", "\"3..2\" is not a number")]
    [InlineData("range = 13", "the number 13")]
    public void A_range_that_cannot_be_taken(string line, string found)
    {
        var mistake = Assert.Single(DemoFiles.MistakesWith(Sheet, Slack, line));
        Assert.Equal((Sheet, DemoFiles.LineOf(Sheet, Slack), 9), (mistake.File, mistake.Line, mistake.Column));
        Assert.Contains(found, mistake.Found);
    }

    [Fact]
    public void A_range_in_a_unit_that_its_point_is_not_read_in()
    {
        var mistake = Assert.Single(DemoFiles.MistakesWith(Sheet, "max = \"6 mm\"", "max = \"6 kPa\""));
        Assert.Equal(DemoFiles.LineOf(Sheet, "chain.spread"), mistake.Line);
        Assert.Contains("\"chain-round\"", mistake.Found);
        Assert.Contains("is read in mm", mistake.Found);
    }

    [Theory]
    [InlineData("also = \"½ to 1½ in\"")]
    [InlineData("also = \"0.54 to 1.26 in\"")]
    public void Two_units_that_do_not_say_the_same_are_shown_converted(string also)
    {
        const string old = "also = \"½ to 1¼ in\"";
        var mistake = Assert.Single(DemoFiles.MistakesWith(Sheet, old, also));
        Assert.Equal((DemoFiles.LineOf(Sheet, old), 8), (mistake.Line, mistake.Column));
        Assert.Contains("not 13 to 32 mm (which is 0.512 to 1.26 in)", mistake.Found);
    }

    // 13 mm stands for 12.5 to 13.5 mm and 0.51 in for 12.827 to 13.081 mm; 0.54 in begins at 13.589 mm: see above
    [Theory]
    [InlineData("also = \"0.51 to 1.26 in\"")]
    [InlineData("also = \"1/2 to 1 1/4 in\"")]
    [InlineData("also = \"1.3 to 3.2 m\"", false)]
    public void Two_units_that_agree_within_their_printed_digits(string also, bool agree = true) =>
        Assert.Equal(agree, DemoFiles.MistakesWith(Sheet, "also = \"½ to 1¼ in\"", also).Count == 0);

    [Theory]
    [InlineData("torque = \"110 mm\"", 10, "\"110 mm\" is not a torque")]
    [InlineData("torque = \"110 N·m\"\ntolerance = \"-5 N·m\"", 13, "\"-5 N·m\"", 1)]
    [InlineData("torque = \"110 N·m\"\ntolerance = \"5 mm\"", 13, "measures something else than N·m", 1)]
    [InlineData("torque = \"110 N·m\"\nmin = \"90 N·m\"", 0, "\"torque\" beside \"min\"")]
    public void A_torque_that_cannot_be_taken(string lines, int column, string found, int below = 0)
    {
        const string old = "torque = \"110 N·m\"";
        var mistake = Assert.Single(DemoFiles.MistakesWith(Sheet, old, lines));
        Assert.Equal(DemoFiles.LineOf(Sheet, old) + below, mistake.Line);
        Assert.Contains(found, mistake.Found);
        if (column > 0)
            Assert.Equal(column, mistake.Column);
    }

    [Fact]
    public void A_target_needs_its_tolerance()
    {
        const string old = "target = \"240 kPa\"\ntolerance = \"15 kPa\"";
        var mistake = Assert.Single(DemoFiles.MistakesWith(Sheet, old, "target = \"240 kPa\""));
        Assert.Equal(DemoFiles.LineOf(Sheet, "[figures.\"tyre.pressure-front\"]"), mistake.Line);
        Assert.Equal("\"tolerance\" is missing", mistake.Found);
    }

    [Theory]
    [InlineData("origin = \"maker\"", "\"maker\"")]
    [InlineData("origin = \"maker: handbook\"", "without a place in it")]
    [InlineData("origin = \"maker: handbok p. 87\"", "document \"handbok\", which the sheet does not have")]
    [InlineData("origin = \"law: United Kingdom\"", "without jurisdiction or clause")]
    [InlineData("origin = \"hearsay\"", "\"hearsay\"")]
    [InlineData("origin = \"standard:\"", "\"standard:\"")]
    public void An_origin_that_says_too_little(string line, string found)
    {
        const string old = "origin = \"maker: handbook p. 87\"";
        var mistake = Assert.Single(DemoFiles.MistakesWith(Sheet, old, line));
        Assert.Equal((DemoFiles.LineOf(Sheet, old), 10), (mistake.Line, mistake.Column));
        Assert.Contains(found, mistake.Found);
    }

    [Fact]
    public void Geometry_of_the_wrong_kind_or_unknown()
    {
        Assert.Contains(
            "wrong kind of unit",
            Assert.Single(DemoFiles.MistakesWith(Sheet, "wheelbase = \"1420 mm\"", "wheelbase = \"1420 kPa\"")).Found
        );
        Assert.Equal(
            "\"wheelbase\"",
            Assert.Single(DemoFiles.MistakesWith(Sheet, "wheelbase = \"1420 mm\"", "wheelbas = \"1420 mm\"")).Right
        );
        Assert.Equal(
            "a length above zero",
            Assert.Single(DemoFiles.MistakesWith(Sheet, "wheelbase = \"1420 mm\"", "wheelbase = \"-1420 mm\"")).Right
        );
    }

    [Fact]
    public void A_schedule_that_no_calendar_understands()
    {
        var mistake = Assert.Single(
            DemoFiles.MistakesWith(Sheet, "every = \"1000 km\"", "every = \"1000 km or often\"")
        );
        Assert.Equal("\"often\"", mistake.Found);
    }

    [Fact]
    public void A_second_figure_of_the_same_key()
    {
        const string old = "[figures.\"axle.nut\"]";
        var mistakes = DemoFiles.MistakesWith(Sheet, old, "[figures.\"chain.slack\"]");
        Assert.Contains(
            mistakes,
            m => m.Line == DemoFiles.LineOf(Sheet, old) && m.Found == "\"chain.slack\" a second time"
        );
    }
}
