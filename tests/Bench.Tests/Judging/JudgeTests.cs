using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Judging;
using Witnessmark.Bench.Tests.Jobs;

namespace Witnessmark.Bench.Tests.Judging;

public class JudgeTests
{
    [Theory]
    [InlineData("tyre-front-tread", "seventy", "4 mm", "4 mm", "cannot be read")]
    [InlineData("tyre-front-tread", "4 kPa", "4 mm", "4 mm", "is in kPa")]
    [InlineData("tyre-front-tread", "4 furlong", "4 mm", "4 mm", "is not a unit")]
    public void A_reading_that_cannot_be_one_is_kept_and_said(string point, string a, string b, string c, string why)
    {
        var state = new AtWork().Arrives().Reads(point, a, b, c).State;
        Assert.Contains(why, Assert.Single(state.NotUnderstood).Why);
        Assert.Equal(Stripe.Unread, state.Points.Single(p => p.Point.Id == point).Stripe);
    }

    [Fact]
    public void A_decimal_comma_and_another_unit_read_the_same()
    {
        var mm = new AtWork().Arrives().Reads("chain-slack", "75 mm", "25 mm")["chain-slack"].Current!;
        var comma = new AtWork().Arrives().Reads("chain-slack", "75,0 mm", "25,0 mm")["chain-slack"].Current!;
        var cm = new AtWork().Arrives().Reads("chain-slack", "0.075 m", "0.025 m")["chain-slack"].Current!;
        Assert.Equal(mm.Opinion.Value!.Value, comma.Opinion.Value!.Value, 1e-9);
        Assert.Equal(mm.Opinion.Value!.Value, cm.Opinion.Value!.Value, 1e-9);
    }

    [Fact]
    public void The_thinnest_pad_is_judged_and_named()
    {
        var pads = new AtWork().Arrives().Reads("front-pads", "4.2 mm", "1.2 mm", "4.1 mm", "4.0 mm")["front-pads"];
        Assert.Equal("Outside by 0.3 mm left outer", pads.Current?.Opinion.Headline);
    }

    [Fact]
    public void A_rule_cannot_decide_what_lies_within_its_error()
    {
        var pads = new AtWork().Arrives().ReadsWith("steel-rule", "rear-pads", "1.6 mm", "3 mm")["rear-pads"];
        Assert.Equal(Stripe.Unproven, pads.Stripe);
        Assert.Contains("Steel rule 300 mm cannot tell", pads.Current?.Opinion.Headline);
    }

    [Fact]
    public void Without_an_instrument_nothing_is_proven()
    {
        var pads = new AtWork().Arrives().ReadsWith(null, "rear-pads", "4 mm", "4 mm")["rear-pads"];
        Assert.Equal(Stripe.Unproven, pads.Stripe);
    }

    [Fact]
    public void Less_distance_than_on_record_is_outside()
    {
        var distance = new AtWork().Arrives().Reads("distance", "11000 km")["distance"];
        Assert.Equal(VerdictWord.Outside, distance.Current?.Opinion.Verdict);
    }

    [Fact]
    public void Another_machines_number_is_outside_and_says_so()
    {
        var vin = new AtWork().Arrives().Reads("identity", "GZ0FE64C5PH000977")["identity"];
        Assert.Equal("Another machine's number", vin.Current?.Opinion.Headline);
    }

    [Fact]
    public void A_figure_that_is_not_the_makers_never_looks_like_one()
    {
        var axle = new AtWork().Arrives().ReadsSides(["29.0 mm"], ["29.0 mm"])["axle-alignment"];
        Assert.Contains("common practice (not the maker)", axle.Current?.Opinion.Grounds);
    }

    [Theory]
    [InlineData(500, 50.0)]
    [InlineData(0.25, 2.5)]
    public void A_value_ten_times_off_is_asked_back_with_both(double typed, double meant)
    {
        var doubt = TenTimes.About(AtWork.Bench.Book.Points["chain-slack"].Reading, typed);
        var sane = TenTimes.About(AtWork.Bench.Book.Points["chain-slack"].Reading, meant);
        Assert.Null(sane);
        Assert.Equal(meant, doubt!.Instead!.Value, 1e-9);
        Assert.Contains("Did you mean", doubt.Question);
    }

    // JCGM 106:2012, 8.3.2: the guard band is z·u = 1.645·0.577 = 0.95 mm; close reaches to twice that, common practice of this tool
    [Theory]
    [InlineData("47 mm", Stripe.Inside)] // 28 mm
    [InlineData("44.5 mm", Stripe.Close)] // 30.5 mm
    [InlineData("43.3 mm", Stripe.Unproven)] // 31.7 mm
    [InlineData("41.5 mm", Stripe.Outside)] // 33.5 mm
    public void Close_lies_between_proven_and_unproven(string lower, Stripe stripe) =>
        Assert.Equal(stripe, new AtWork().Arrives().Reads("chain-slack", "75 mm", lower)["chain-slack"].Stripe);
}
