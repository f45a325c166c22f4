using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.SecondChecks;
using Witnessmark.Bench.Tests.Jobs;

namespace Witnessmark.Bench.Tests.SecondChecks;

/// <summary>Whether two readings agree. Eₙ ≤ 1: ISO/IEC 17043:2010, B.3.1.3, and ISO 13528:2015, 9.7 (clauses from memory).</summary>
public sealed class AgreementTests
{
    // The rule: 1 mm steps, ± 0.5 mm. Two marks: u² = 2·(1/12 + 0.25/3) = 1/3, U = 2/√3 = 1.155 mm. √(U² + U²) = 1.633 mm.
    [Theory]
    [InlineData("61.6 mm", "38 mm", true)] // 23.6 against 22: Eₙ = 0.98
    [InlineData("61.7 mm", "38 mm", false)] // 23.7 against 22: Eₙ = 1.04
    public void Two_readings_of_slack_agree_within_their_uncertainty(string low, string high, bool agrees)
    {
        var check = Checked("chain-slack", "steel-rule", ["60 mm", "38 mm"], "steel-rule", [low, high]);
        Assert.Equal(agrees, check.Agrees);
        Assert.Equal(!agrees, check.Differs);
        Assert.Contains("ISO 13528:2015, 9.7", string.Join('\n', check.Agreement!.Working));
    }

    // The wrench: ± 4 %. U = 2·110·0.04/√3 = 5.08 N·m each, together 7.18.
    [Theory]
    [InlineData("112 N·m", true)]
    [InlineData("100 N·m", false)] // outside besides
    public void Two_torques_agree_within_what_the_wrench_permits(string second, bool agrees) =>
        Assert.Equal(
            agrees,
            Checked("axle-nut", "torque-wrench-120", ["110 N·m"], "torque-wrench-120", [second]).Agrees
        );

    // each pad against the same pad: the thinnest are alike, and yet one differs
    [Fact]
    public void Places_are_compared_each_with_itself()
    {
        string[] first = ["4.2 mm", "4.2 mm", "4.2 mm", "3.1 mm"];
        Assert.True(Checked("front-pads", "calliper", first, "calliper", first).Agrees);
        Assert.True(
            Checked("front-pads", "calliper", first, "calliper", ["4.2 mm", "3.1 mm", "4.2 mm", "3.1 mm"]).Differs
        );
    }

    [Fact]
    public void Without_an_instrument_nothing_says_whether_they_agree()
    {
        var check = Checked("chain-slack", "steel-rule", ["60 mm", "38 mm"], null, ["60 mm", "38 mm"]);
        Assert.True(check.Differs);
        Assert.Equal("the second reading proves nothing", check.Agreement!.Words);
    }

    [Fact]
    public void What_was_seen_agrees_when_it_is_the_same_everywhere()
    {
        Assert.True(
            Checked(
                "brake-feel",
                null,
                ["yes", "yes", "yes", "yes", "yes"],
                null,
                ["yes", "yes", "yes", "yes", "yes"]
            ).Agrees
        );
        // a second person who sees something wrong has not agreed
        Assert.True(
            Checked(
                "brake-feel",
                null,
                ["yes", "yes", "yes", "yes", "yes"],
                null,
                ["yes", "no", "yes", "yes", "yes"]
            ).Differs
        );
    }

    private static SecondCheck Checked(string point, string? with1, string[] first, string? with2, string[] second) =>
        new AtWork()
            .ArrivesChecked(point)
            .ReadsWith(with1, point, first)
            .Marks(point)
            .Hands("Bram Okello")
            .ReadsSecond(point, with2, second)[point]
            .Second!;
}
