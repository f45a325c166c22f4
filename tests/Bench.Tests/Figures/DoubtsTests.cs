using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Figures.Plausibility;
using Witnessmark.Bench.Tests.Book;

namespace Witnessmark.Bench.Tests.Figures;

public class DoubtsTests
{
    [Fact]
    public void The_demo_gives_no_cause_for_doubt() => Assert.Empty(Doubts.Of(Sheet("")));

    // VDI 2230 as tabulated for M8 8.8 (from memory): 27.3 N·m at friction 0.14; more than 33 N·m stretches it even at 0.20
    [Theory]
    [InlineData("25 N·m", null)]
    [InlineData("33 N·m", null)]
    [InlineData("40 N·m", "beyond its yield point")]
    [InlineData("25 lbf·in", null)]
    [InlineData("1.2 N·m", "less than a tenth")]
    [InlineData("25 lbf·ft", null)]
    [InlineData("40 lbf·ft", "beyond its yield point")]
    public void A_torque_is_held_against_its_bolt(string torque, string? said) =>
        Said($"[figures.\"a.bolt\"]\ntorque = \"{torque}\"\nbolt = \"M8 8.8\"\norigin = \"shop\"\n", said);

    [Theory]
    [InlineData("range = \"35 to 38 kPa\"", "in bar")]
    [InlineData("min = \"240 kPa\"", null)]
    [InlineData("min = \"2.4 bar\"", null)]
    [InlineData("min = \"240 psi\"", "kPa it would be")]
    [InlineData("min = \"35 kPa\"", "psi it would be")]
    [InlineData("min = \"450 kPa\"", null)]
    [InlineData("min = \"80 kPa\"", null)]
    [InlineData("min = \"79 kPa\"", "no pressure for a tyre")]
    public void A_tyre_pressure_in_the_wrong_unit_is_noticed(string demand, string? said) =>
        Said(
            $"[figures.\"tyre.pressure-spare\"]\n{demand}\norigin = \"shop\"\n",
            said == "in bar" ? "no pressure for a tyre" : said
        );

    [Theory]
    [InlineData("0.4 L", "unusual")]
    [InlineData("4.5 L", null)]
    [InlineData("4.6 L", "unusual")]
    [InlineData("3.6 US qt", null)]
    [InlineData("5 US qt", "4.73 L")]
    public void An_oil_capacity_is_held_against_the_engine(string amount, string? said)
    {
        var doubts = Doubts.Of(Sheet("", ("amount = \"3.60 US qt\"\nalso = \"3.41 L\"", $"amount = \"{amount}\"")));
        Assert.Equal(said is null ? 0 : 1, doubts.Count);
        if (said is not null)
            Assert.Contains(said, doubts[0].Words, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("M8")]
    [InlineData("M8 9.9")]
    [InlineData("M7.3 8.8")]
    public void A_bolt_that_does_not_exist_is_a_mistake(string bolt)
    {
        var text = Text($"[figures.\"a.bolt\"]\ntorque = \"25 N·m\"\nbolt = \"{bolt}\"\norigin = \"shop\"\n");
        var mistake = Assert.Single(FigureSheets.Read(new("sheets/x.toml", text)).Mistakes);
        Assert.Contains(bolt, mistake.Found, StringComparison.Ordinal);
    }

    private static void Said(string figure, string? said)
    {
        var doubts = Doubts.Of(Sheet(figure));
        Assert.Equal(said is null ? 0 : 1, doubts.Count);
        if (said is not null)
            Assert.Contains(said, doubts[0].Words, StringComparison.Ordinal);
    }

    private static FigureSheet Sheet(string figure, params (string Old, string New)[] changed)
    {
        var text = changed.Aggregate(Text(figure), (t, c) => t.Replace(c.Old, c.New));
        var (sheet, mistakes) = FigureSheets.Read(new("sheets/fell-640.toml", text));
        Assert.Empty(mistakes);
        return sheet!;
    }

    private static string Text(string figure) =>
        DemoFiles.All.Single(s => s.Name == "sheets/fell-640.toml").Text.Replace("[geometry]", figure + "\n[geometry]");
}
