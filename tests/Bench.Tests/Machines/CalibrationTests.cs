using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Judging;
using Witnessmark.Bench.Machines;
using Witnessmark.Bench.Tests.Book;
using Witnessmark.Bench.Tests.Jobs;

namespace Witnessmark.Bench.Tests.Machines;

public class CalibrationTests
{
    private static readonly DateOnly Due = new(2026, 11, 25);

    private static ShopInstrument Rule { get; } =
        DemoFiles.Bench.Workshop.Instruments["steel-rule"] with
        {
            Checked = null,
        };

    [Theory]
    [InlineData(0, CalibrationState.InDate, true)]
    [InlineData(1, CalibrationState.Overdue, false)]
    [InlineData(-400, CalibrationState.InDate, true)]
    public void It_holds_up_to_its_last_day(int days, CalibrationState state, bool proves)
    {
        var rule = Rule with { Checked = Due.AddYears(-1), Due = Due };
        Assert.Equal(
            (state, proves),
            (Calibration.On(rule, Due.AddDays(days)), Calibration.Proves(rule, Due.AddDays(days)))
        );
        Assert.Equal(
            proves ? null : "Steel rule 300 mm had to be checked by 2026-11-25.",
            Calibration.Doubt(rule, Due.AddDays(days))
        );
    }

    [Theory]
    [InlineData(false, true)]
    [InlineData(true, false)]
    public void No_date_is_said_and_refused_only_when_the_shop_says_so(bool needed, bool proves)
    {
        var rule = Rule with { DateNeeded = needed };
        Assert.Equal((CalibrationState.NoDate, proves), (Calibration.On(rule, Due), Calibration.Proves(rule, Due)));
        Assert.Equal("Steel rule 300 mm: no date on record of its last check.", Calibration.Doubt(rule, Due));
        Assert.True(Calibration.Proves(rule with { NeverChecked = true }, Due));
        Assert.True(Calibration.Proves(rule with { Kind = "level" }, Due));
        Assert.True(Calibration.Proves(rule with { Checked = Due }, Due));
    }

    [Theory]
    [InlineData("checked = 2024-02-12\ncheck-every = \"12 months\"", "2025-02-12")]
    [InlineData("checked = 2024-01-31\ncheck-every = \"1 month\"", "2024-02-29")]
    [InlineData("checked = 2024-02-12\ndue = 2024-02-13", "2024-02-13")]
    [InlineData("due = 2030-02-13", "2030-02-13")]
    [InlineData("checked = 2024-02-12", null)]
    [InlineData("check-every = \"never\"", null)]
    public void The_day_is_read_or_reckoned(string keys, string? due) =>
        Assert.Equal(due, With(keys)!.Workshop.Instruments["torque-wrench-old"].Due?.ToString("yyyy-MM-dd"));

    [Theory]
    [InlineData("check-every = \"12 months\"", "an interval without a beginning")]
    [InlineData("checked = 2024-02-12\ncheck-every = \"12 day\"", "\"12 day\"")]
    [InlineData("checked = 2024-02-12\ncheck-every = \"0 months\"", "\"0 months\"")]
    [InlineData("checked = 2024-02-12\ncheck-every = \"1.5 months\"", "\"1.5 months\"")]
    [InlineData("checked = 2024-02-12\ncheck-every = \"601 months\"", "\"601 months\"")]
    [InlineData("checked = 2024-02-12\ndue = 2024-02-12", "not after the day on which it was checked")]
    [InlineData("due = 2025-02-12\ncheck-every = \"never\"", "\"check-every\" beside \"due\"")]
    [InlineData("lever = \"0 mm\"", "\"0 mm\"")]
    public void Slips_are_told(string keys, string found) =>
        Assert.Contains(found, Assert.Single(DemoFiles.MistakesWith("shop.toml", Old, keys)).Found);

    /// <summary>JCGM 100:2008 (GUM), 4.3.3: U = 0.06 mm with k = 2 is u = 0.03 mm; as a half-width over √3, 4.3.7: 0.03·√3 mm.</summary>
    [Fact]
    public void A_certificate_stands_in_the_place_of_the_permissible_error()
    {
        const string own = "error = \"0.08 mm\"";
        Assert.Empty(DemoFiles.MistakesWith("shop.toml", own, "certificate = \"0.06 mm\""));
        var shop = WorkbenchFiles
            .Read(DemoFiles.All.Select(s => s with { Text = s.Text.Replace(own, "certificate = \"0.06 mm\"") }))
            .Bench!.Workshop;
        Assert.Equal(0.03 * Math.Sqrt(3), shop.Instruments["calliper"].PermissibleError, 12);
        Assert.Contains(
            "\"certificate\" beside \"error\"",
            Assert.Single(DemoFiles.MistakesWith("shop.toml", own, own + "\ncertificate = \"0.06 mm\"")).Found
        );
    }

    /// <summary>The same reading of the same point, once as one of use.</summary>
    [Fact]
    public void An_overdue_instrument_still_judges_a_point_of_use()
    {
        var rule = Rule with { Due = Due.AddDays(-1) };
        var slack = AtWork.Bench.Book.Points["chain-slack"];
        var figure = AtWork.Bench.Newest("fell-640")!.Figures["chain.slack"];
        var machine = AtWork.Bench.Workshop.Machines["fell-640-0412"];
        VerdictWord With(bool safety, DateOnly? on) =>
            Judge
                .Reading(new(slack with { Safety = safety }, figure, machine, ["60 mm", "40 mm"], [], rule, on))
                .Opinion!.Verdict;
        Assert.Equal(VerdictWord.Inside, With(safety: false, Due));
        Assert.Equal(VerdictWord.Unproven, With(safety: true, Due));
        Assert.Equal(VerdictWord.Inside, With(safety: true, null)); // a day that nobody knows decides nothing
    }

    /// <summary>Overdue: kept, unproven, holding; what is outside stays outside; a point of use is not held.</summary>
    [Fact]
    public void An_overdue_instrument_proves_no_safety_point_and_the_reading_is_kept()
    {
        var work = new AtWork().Arrives().Reads("chain-slack", "60 mm", "40 mm").Marks("chain-slack");
        Assert.Equal(VerdictWord.Inside, Slack("2026-11-25").Current!.Opinion.Verdict);
        var held = Slack("2026-11-24");
        Assert.Equal(VerdictWord.Unproven, held.Current!.Opinion.Verdict);
        Assert.StartsWith(
            "Steel rule 300 mm had to be checked by 2026-11-24. Read it again",
            held.Current.Opinion.Grounds
        );
        Assert.Null(held.Marked);
        work.Reads("chain-slack", "75 mm", "25 mm");
        Assert.Equal(VerdictWord.Outside, Slack("2026-11-24").Current!.Opinion.Verdict);

        PointState Slack(string due)
        {
            var bench = With($"checked = 2024-02-12\ncheck-every = \"12 months\"")!;
            var rule = bench.Workshop.Instruments["steel-rule"] with { Due = DateOnly.Parse(due) };
            var instruments = bench.Workshop.Instruments.ToDictionary();
            instruments["steel-rule"] = rule;
            bench = bench with { Workshop = bench.Workshop with { Instruments = instruments } };
            return JobFold.Of(AtWork.Job, work.Entries, bench).Points.Single(p => p.Point.Id == "chain-slack");
        }
    }

    private const string Old = "checked = 2024-02-12\ncheck-every = \"12 months\"";

    private static Workbench? With(string keys) =>
        WorkbenchFiles.Read(DemoFiles.All.Select(s => s with { Text = s.Text.Replace(Old, keys) })).Bench;
}
