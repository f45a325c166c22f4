using Witnessmark.Handbook.FinalDrive;

namespace Witnessmark.Handbook.Tests.FinalDrive;

public class ChainWearTests
{
    private const double Roller = 10.1;

    private static Answer<Elongation> Measured(
        double middle,
        int links = 20,
        double roller = Roller,
        double u = 0.05
    ) =>
        ChainWear.From(
            new(middle + roller),
            new(middle - roller),
            links,
            Sprockets.FiveEighthsInch,
            new(u),
            ChainWear.UsualLimit
        );

    // Oracle: both readings moved by one deviation each, independently
    [Fact]
    public void Uncertainty_is_that_of_both_readings_moved_by_their_deviation()
    {
        const double nominal = 20 * 15.875;
        double Elongated(double outer, double inner) =>
            ChainWear
                .From(new(outer), new(inner), 20, Sprockets.FiveEighthsInch, new(0.05), ChainWear.UsualLimit)
                .Certain.Value.Value;
        var still = Elongated(330, 309.8);
        var moved = (Elongated(330.05, 309.8) - still, Elongated(330, 309.85) - still);
        Assert.Equal(
            Math.Sqrt(moved.Item1 * moved.Item1 + moved.Item2 * moved.Item2),
            Measured(319.9).Certain.Uncertainty.Value,
            1e-12
        );
        Assert.Equal((330 + 309.8) / 2 / nominal - 1, still, 1e-12);
    }

    [Theory]
    [InlineData(2.03, WearVerdict.Replace)]
    [InlineData(2.02, WearVerdict.Again)] // 2u = 0.0223 %
    [InlineData(1.98, WearVerdict.Again)]
    [InlineData(1.97, WearVerdict.Keep)]
    [InlineData(3.2, WearVerdict.Replace)]
    public void Verdict_near_the_limit(double percent, WearVerdict verdict) =>
        Assert.Equal(verdict, Measured(20 * 15.875 * (1 + percent / 100)).Certain.Verdict);

    // 25 pitches of 16 mm measure 450 mm: an eighth beyond, without any rounding
    [Theory]
    [InlineData(0.125, WearVerdict.Replace)]
    [InlineData(0.126, WearVerdict.Keep)]
    public void On_the_limit_a_chain_is_worn(double limit, WearVerdict verdict) =>
        Assert.Equal(verdict, ChainWear.From(new(458), new(442), 25, new(16), new(0), new(limit)).Certain.Verdict);

    // A published rule: 24 pitches of 1 in are replaced at 24.75 in (read), 3.125 %
    [Fact]
    public void Elongation_of_a_published_replacement_length() =>
        Assert.Equal(
            0.03125,
            ChainWear
                .From(
                    new(24.75 * 25.4 + 15.9),
                    new(24.75 * 25.4 - 15.9),
                    24,
                    new(25.4),
                    new(0.05),
                    ChainWear.UsualLimit
                )
                .Certain.Value.Value,
            1e-9
        );

    [Theory]
    [InlineData(2)]
    [InlineData(14)]
    public void Readings_over_different_rollers_are_refused(double roller) =>
        Assert.Equal("notTheSameRollers", Measured(320, roller: roller).Refusal?.Key);

    // 0.5 % short is a miscount, unless twice the uncertainty, 0.0223 %, leaves room for less
    [Theory]
    [InlineData(-0.51, true)]
    [InlineData(-0.53, false)]
    public void What_the_caliper_leaves_open_is_no_miscount(double percent, bool holds) =>
        Assert.Equal(holds, Measured(20 * 15.875 * (1 + percent / 100)).Holds);

    [Fact]
    public void A_chain_shorter_than_new_means_that_the_links_were_miscounted()
    {
        // 20 links worn by 0.5 %, counted as 21
        var answer = Measured(20 * 15.875 * 1.005, links: 21);
        Assert.Equal("shorterThanNew", answer.Refusal?.Key);
        Assert.Null(answer.Value!.Verdict);
    }
}
