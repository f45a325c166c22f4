using Witnessmark.Bench.AtThePoint;
using Witnessmark.Bench.Book;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Toml;

namespace Witnessmark.Bench.Tests.Book;

/// <summary>Which machine has which point.</summary>
public class OnlyForTests
{
    private const string Sheet = "sheets/fell-640.toml";

    [Theory]
    [InlineData("", "", Has.Yes)]
    [InlineData("kind=quad", "kind=quad", Has.Yes)]
    [InlineData("kind=quad", "kind=motorcycle", Has.No)]
    [InlineData("kind=quad", "", Has.NotSaid)]
    [InlineData("kind=quad drive=chain|belt", "kind=quad drive=belt", Has.Yes)]
    [InlineData("kind=quad drive=chain|belt", "kind=quad drive=shaft", Has.No)]
    [InlineData("kind=quad winch=true", "kind=motorcycle", Has.No)] // a motorcycle's winch need not be asked about
    [InlineData("kind=quad winch=true", "kind=quad", Has.NotSaid)]
    [InlineData("winch=true", "winch=false", Has.No)]
    public void A_condition_that_fails_decides_and_one_not_said_leaves_it_open(string conditions, string said, Has has)
    {
        var facts = Pairs(said).ToDictionary(p => p.Name, p => p.Words[0]);
        var only = new OnlyFor(Pairs(conditions).ToDictionary(p => p.Name, p => (IReadOnlyList<string>)p.Words));
        Assert.Equal(has, only.On(facts.GetValueOrDefault));
    }

    [Fact]
    public void A_motorcycle_with_a_chain_is_planned_no_quad_belt_shaft_drum_or_spoke()
    {
        var plan = Plan(DemoFiles.Bench, "restoration");
        Assert.Contains("chain-slack", plan);
        Assert.Contains("abs", plan);
        string[] not =
        [
            "quad-toe",
            "quad-winch",
            "belt-deflection",
            "shaft-oil",
            "front-drum",
            "spokes",
            "cooling-fins",
        ];
        Assert.Empty(
            plan.Intersect([.. not, "carburettor", "battery-acid", "throttle-electronic", "clutch-hydraulic"])
        );
    }

    [Theory]
    [InlineData("wheels = \"cast\"", "wheels = \"spoked\"", "spokes", true)]
    [InlineData("throttle = \"cable\"", "throttle = \"electronic\"", "throttle-electronic", true)]
    [InlineData("throttle = \"cable\"", "throttle = \"electronic\"", "throttle-free-play", false)]
    [InlineData("cooled = \"liquid\"", "cooled = \"air\"", "coolant-level", false)]
    [InlineData("valves = \"shims\"", "valves = \"hydraulic\"", "valve-clearances", false)]
    [InlineData("abs = true", "abs = false", "abs", false)]
    [InlineData("clutch = \"cable\"", "clutch = \"hydraulic\"", "clutch-lever-play", false)]
    public void The_sheet_decides(string said, string otherwise, string point, bool has)
    {
        var (bench, mistakes) = WorkbenchFiles.Read(With(Sheet, said, otherwise));
        Assert.Empty(mistakes);
        Assert.Equal(has, Plan(bench!, "restoration").Contains(point));
        Assert.Equal(!has, Plan(DemoFiles.Bench, "restoration").Contains(point));
    }

    [Fact]
    public void What_a_machine_says_of_itself_stands_above_its_sheet()
    {
        const string year = "year = 2024\n";
        var (bench, mistakes) = WorkbenchFiles.Read(
            With("shop.toml", year, year + "facts = { wheels = \"spoked\" }\n")
        );
        Assert.Empty(mistakes);
        Assert.Contains("spokes", Plan(bench!, "service"));
        var other = bench!.Workshop.Machines["fell-640-0977"];
        Assert.DoesNotContain("spokes", bench.Plan("service", bench.Newest("fell-640")!, other).Select(p => p.Point));
    }

    [Fact]
    public void A_machine_cannot_say_what_its_sheet_measures()
    {
        const string year = "year = 2024\n";
        var mistake = Assert.Single(
            WorkbenchFiles.Read(With("shop.toml", year, year + "facts = { front-teeth = 14 }\n")).Mistakes
        );
        Assert.Contains("unknown key \"front-teeth\"", mistake.Found);
    }

    [Fact]
    public void What_nobody_said_is_asked_for_at_the_sheet_once()
    {
        var mistakes = WorkbenchFiles.Read(With(Sheet, "wheels = \"cast\"\n", "")).Mistakes;
        var mistake = Assert.Single(mistakes);
        Assert.Equal((Sheet, DemoFiles.LineOf(Sheet, "[sheet]")), (mistake.File, mistake.Line));
        Assert.Equal($"{Sheet} does not say \"wheels\", on which point \"spokes\" hangs", mistake.Found);
        Assert.Equal("under [facts] wheels = \"spoked\" or \"cast\"", mistake.Right);
    }

    [Fact]
    public void What_every_machine_says_itself_the_sheet_need_not()
    {
        var files = With(Sheet, "abs = true\n", "")
            .Select(f =>
                f.Name == "shop.toml"
                    ? f with
                    {
                        Text = f.Text.Replace("sheet = \"fell-640\"", "sheet = \"fell-640\"\nfacts = { abs = false }"),
                    }
                    : f
            );
        Assert.Empty(WorkbenchFiles.Read(files).Mistakes);
    }

    [Fact]
    public void A_truth_that_nobody_said_is_asked_for_without_quotes() =>
        Assert.Equal(
            "under [facts] abs = true or false",
            Assert.Single(WorkbenchFiles.Read(With(Sheet, "abs = true\n", "")).Mistakes).Right
        );

    [Fact]
    public void A_figure_that_is_nearly_asked_for_is_a_slip_in_the_sheet()
    {
        var mistake = Assert.Single(
            WorkbenchFiles.Read(With(Sheet, "[figures.\"plug.gap\"]", "[figures.\"plug.gab\"]")).Mistakes
        );
        Assert.Equal("no point asks for a figure \"plug.gab\"", mistake.Found);
        Assert.Equal(
            (DemoFiles.LineOf(Sheet, "plug.gap"), 10, "\"plug.gap\""),
            (mistake.Line, mistake.Column, mistake.Right)
        );
    }

    [Theory]
    [InlineData("[figures.\"plug.gap\"]", "[figures.\"own.number\"]", 0)] // read for use: recorded without a verdict
    [InlineData("[figures.\"disc.front\"]", "[figures.\"own.number\"]", 1)] // safety: not proven without
    [InlineData("[figures.\"plug.torque\"]", "[figures.\"own.number\"]", 1)] // a fastener: not proven without either
    public void A_figure_may_be_missing_and_is_told_where_the_bench_will_ask_for_it(string old, string other, int gaps)
    {
        var (bench, mistakes) = WorkbenchFiles.Read(With(Sheet, old, other));
        Assert.Empty(mistakes);
        Assert.Equal(gaps, SheetGaps.Of(bench!).Select(g => g.Key).Distinct().Count());
    }

    [Fact]
    public void An_instrument_that_the_shop_does_not_have_is_chosen_at_the_bench()
    {
        var shop = DemoFiles.All.Single(f => f.Name == "shop.toml").Text;
        var from = shop.IndexOf("[instruments.refractometer]", StringComparison.Ordinal);
        var to = shop.IndexOf("[instruments.multimeter]", StringComparison.Ordinal);
        Assert.Empty(WorkbenchFiles.Read(With("shop.toml", shop[from..to], "")).Mistakes);
    }

    private static IReadOnlyList<string> Plan(Workbench bench, string purpose)
    {
        var machine = bench.Workshop.Machines["fell-640-0412"];
        return [.. bench.Plan(purpose, bench.Newest(machine.Sheet)!, machine).Select(p => p.Point)];
    }

    private static IEnumerable<SourceText> With(string file, string old, string other)
    {
        Assert.Contains(old, DemoFiles.All.Single(f => f.Name == file).Text);
        return DemoFiles.All.Select(f => f.Name == file ? f with { Text = f.Text.Replace(old, other) } : f);
    }

    private static IEnumerable<(string Name, string[] Words)> Pairs(string text) =>
        text.Split(' ', StringSplitOptions.RemoveEmptyEntries)
            .Select(p => p.Split('='))
            .Select(p => (p[0], p[1].Split('|')));
}
