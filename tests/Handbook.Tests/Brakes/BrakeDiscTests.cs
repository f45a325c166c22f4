using FsCheck.Xunit;
using Witnessmark.Handbook.Brakes;
using Witnessmark.Handbook.Measuring;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Tests.Brakes;

public class BrakeDiscTests
{
    // u² = 0.01²/12 + 0.02²/3 = 0.00014166667 mm², u = 0.0119024 mm; 1.644854·u = 0.0195777 mm (GUM 4.3.7, F.2.2.1; JCGM 106, 8.3.2)
    private static readonly Instrument Micrometer = new(0.01, 0.02);
    private static readonly Instrument Exact = new(0, 0);

    private static Length[] Mm(params double[] values) => [.. values.Select(v => new Length(v))];

    private static Answer<DiscJudged> Judge(
        double[] thicknesses,
        double? runout = null,
        double? runoutLimit = null,
        double? variationLimit = null,
        Instrument? instrument = null
    ) =>
        BrakeDisc.Judge(
            Mm(thicknesses),
            new(4.5),
            Mm(runout),
            Mm(runoutLimit),
            Mm(variationLimit),
            instrument ?? Micrometer
        );

    private static Length? Mm(double? value) => value is { } v ? new Length(v) : null;

    [Theory]
    [InlineData(4.5196, Call.Inside)]
    [InlineData(4.5195, Call.Unproven)]
    [InlineData(4.5, Call.Unproven)]
    [InlineData(4.4805, Call.Unproven)]
    [InlineData(4.4804, Call.Outside)]
    public void Thickness_is_judged_with_one_deviation_of_the_instrument(double thinnest, Call call) =>
        Assert.Equal(call, Judge([5, thinnest, 4.9]).Certain.Thickness.Call);

    [Theory]
    [InlineData(0.0804, Call.Inside)]
    [InlineData(0.0805, Call.Unproven)]
    [InlineData(0.1195, Call.Unproven)]
    [InlineData(0.1196, Call.Outside)]
    public void Runout_is_judged_with_one_deviation_of_the_instrument(double runout, Call call) =>
        Assert.Equal(call, Judge([5], runout, 0.1).Certain.Runout!.Value.Call);

    // √2·0.0195777 = 0.0276871 mm: two readings make the variation
    [Theory]
    [InlineData(0.0723, Call.Inside)]
    [InlineData(0.0724, Call.Unproven)]
    [InlineData(0.1276, Call.Unproven)]
    [InlineData(0.1277, Call.Outside)]
    public void Variation_is_judged_with_the_instrument_counted_twice(double variation, Call call) =>
        Assert.Equal(call, Judge([5, 5 + variation], variationLimit: 0.1).Certain.Evenness!.Value.Call);

    [Fact]
    public void Ends_are_found_wherever_they_stand()
    {
        foreach (
            var order in (double[][])
                [
                    [4.6, 4.8, 4.7],
                    [4.8, 4.6, 4.7],
                    [4.7, 4.8, 4.6],
                    [4.8, 4.7, 4.6],
                ]
        )
        {
            var disc = Judge(order).Certain;
            Assert.Equal(4.6, disc.Thinnest.Millimetres);
            Assert.Equal(0.2, disc.Variation!.Value.Millimetres, 1e-12);
        }
    }

    [Fact]
    public void An_exact_reading_on_the_limit_is_inside()
    {
        var disc = Judge([4.5, 4.75], 0.25, 0.25, 0.25, Exact).Certain;
        Assert.Equal(
            (Call.Inside, Call.Inside, Call.Inside),
            (disc.Thickness.Call, disc.Runout!.Value.Call, disc.Evenness!.Value.Call)
        );
    }

    [Fact]
    public void What_was_not_read_or_has_no_limit_is_not_judged()
    {
        Assert.Null(Judge([5], runoutLimit: 0.1).Certain.Runout);
        Assert.Null(Judge([5], runout: 0.1).Certain.Runout);
        Assert.Null(Judge([5, 5.1]).Certain.Evenness);
        Assert.Equal(0, Judge([5], runout: 0, runoutLimit: 0.1).Certain.Runout!.Value.Conformance - 1, 1e-9);
    }

    [Fact]
    public void One_reading_says_nothing_of_the_variation_but_the_thickness_holds()
    {
        Assert.Null(Judge([5]).Certain.Variation);
        var refused = Judge([5], variationLimit: 0.1);
        Assert.Equal("tooFewReadings", refused.Refusal?.Key);
        Assert.Equal(Call.Inside, refused.Value!.Thickness.Call);
        Assert.Null(refused.Value.Variation);
        Assert.Null(refused.Value.Evenness);
    }

    [Property(MaxTest = 200)]
    public void A_further_reading_never_makes_a_disc_thicker_or_more_even(uint first, uint second, uint third)
    {
        var readings = ((uint[])[first, second, third]).Select(c => Chance.Between(4.3, 5, c)).ToArray();
        var two = Judge(readings[..2], variationLimit: 0.1).Certain;
        var three = Judge(readings, variationLimit: 0.1).Certain;
        Assert.True(three.Thickness.Conformance <= two.Thickness.Conformance);
        Assert.True(three.Evenness!.Value.Conformance <= two.Evenness!.Value.Conformance);
    }

    [Fact]
    public void Without_a_reading_it_is_a_bug_of_the_caller() => Assert.Throws<ArgumentException>(() => Judge([]));
}
