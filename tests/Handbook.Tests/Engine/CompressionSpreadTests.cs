using System.Text.Json;
using Witnessmark.Handbook.Catalogue;
using Witnessmark.Handbook.Engine;
using Witnessmark.Handbook.Measuring;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Tests.Engine;

// Arithmetic throughout
public class CompressionSpreadTests
{
    [Theory]
    [InlineData(850, 0.15, Call.Inside)]
    [InlineData(849, 0.15, Call.Outside)]
    [InlineData(1000, 0, Call.Inside)]
    public void A_spread_on_its_limit_is_inside(double lowest, double limit, Call call) =>
        Assert.Equal(call, Of(lowest, null, limit).Certain.Call);

    [Theory]
    [InlineData(900, Call.Inside)]
    [InlineData(901, Call.Outside)]
    public void The_lowest_must_reach_the_smallest_permitted(double smallest, Call call) =>
        Assert.Equal(call, Of(900, smallest, 0.5).Certain.Call);

    [Theory]
    [InlineData(1000, 1250, 1200)]
    [InlineData(1250, 1000, 1200)]
    [InlineData(1200, 1000, 1250)]
    [InlineData(1200, 1250, 1000)]
    public void The_order_of_the_cylinders_does_not_matter(double one, double two, double three)
    {
        var spread = CompressionSpread.Of([new(one), new(two), new(three)], null, new(0.15)).Certain;
        Assert.Equal((1000, 0.2), (spread.Lowest.Kilopascals, spread.OfHighest.Value));
    }

    [Fact]
    public void A_dead_cylinder_beside_a_good_one_spreads_the_whole() =>
        Assert.Equal(1, Of(0, null, 0.15).Certain.OfHighest.Value);

    [Fact]
    public void An_engine_without_any_pressure_is_refused() =>
        Assert.Equal("noPressure", CompressionSpread.Of([new(0), new(0)], null, new(0.15)).Refusal!.Key);

    [Theory]
    [InlineData("""{"pressures":[],"spreadLimit":"15 %"}""", "pressures")]
    [InlineData("""{"pressures":["-1 kPa"],"spreadLimit":"15 %"}""", "pressures.0")]
    [InlineData("""{"pressures":["12 mm"],"spreadLimit":"15 %"}""", "pressures.0")]
    [InlineData("""{"pressures":["12 bar"],"spreadLimit":"115 %"}""", "spreadLimit")]
    [InlineData("""{"pressures":["12 bar"],"spreadLimit":"15 %","limit":{"max":"1 bar"}}""", "limit.max")]
    public void A_malformed_request_is_named(string given, string key) =>
        Assert.StartsWith(
            key + ":",
            Calculations.Named("compression-spread")!.Ask(JsonDocument.Parse(given).RootElement).Malformed
        );

    private static Answer<Spread> Of(double lowest, double? smallest, double limit) =>
        CompressionSpread.Of(
            [new(1000), new(lowest)],
            smallest is { } min ? new Pressure(min) : null,
            new Ratio(limit)
        );
}
