using Witnessmark.Handbook.Measuring;
using Witnessmark.Handbook.Quantities;
using Witnessmark.Handbook.Tyres;

namespace Witnessmark.Handbook.Tests.Tyres;

public class TreadDepthTests
{
    private static readonly Instrument Exact = new(0, 0);

    private static Answer<TreadJudged> Judge(
        double depth,
        string jurisdiction = "GB",
        RoadVehicle vehicle = RoadVehicle.Motorcycle,
        double? shop = null,
        Instrument? gauge = null
    ) =>
        TreadDepth.Judge(
            [new(9), new(depth), new(9.5)],
            jurisdiction,
            vehicle,
            gauge ?? Exact,
            shop is { } s ? new Length(s) : null
        );

    public static IEnumerable<TheoryDataRow<string, string, string, string, string, string>> Laws =>
        PublishedRows
            .Of("minimum-tread-depth.csv")
            .Select(r => new TheoryDataRow<string, string, string, string, string, string>(
                r[0],
                r[2],
                r[3],
                r[4],
                r[5],
                r[6]
            ));

    // The table of minimum tread depths, each row with its law
    [Theory]
    [MemberData(nameof(Laws))]
    public void The_law_of_each_row_decides(
        string jurisdiction,
        string vehicle,
        string printed,
        string divisor,
        string unit,
        string clause
    )
    {
        var kind = Enum.Parse<RoadVehicle>(vehicle, ignoreCase: true);
        if (printed.Length == 0)
        {
            var refused = Judge(5, jurisdiction, kind);
            Assert.Equal("noDepthInLaw", refused.Refusal?.Key);
            Assert.Equal(clause, refused.Value!.Clause);
            Assert.Contains(refused.Value.Asks!, refused.Refusal!.Because);
            Assert.Equal(((Judged?)null, false), (refused.Value.Judged, refused.Value.ByShop));
            return;
        }
        var minimum = PublishedRows.Number(printed) / PublishedRows.Number(divisor) * (unit == "in" ? 25.4 : 1);
        var least = Judge(minimum, jurisdiction, kind).Certain;
        Assert.Equal(minimum, least.Minimum!.Value.Millimetres, 1e-12);
        Assert.Equal((Call.Inside, clause, false), (least.Judged!.Value.Call, least.Clause, least.ByShop));
        Assert.Equal(Call.Outside, Judge(minimum - 0.001, jurisdiction, kind).Certain.Judged!.Value.Call);
    }

    // Construction and Use Regulations 1986 reg. 27; StVZO § 36; KDV § 4 Abs. 4; COMAR 11.14.03.05; 19VAC30-70-400
    [Theory]
    [InlineData("GB", RoadVehicle.Motorcycle, 1.0)]
    [InlineData("DE", RoadVehicle.Motorcycle, 1.6)]
    [InlineData("DE", RoadVehicle.Moped, 1.0)]
    [InlineData("AT", RoadVehicle.Motorcycle, 1.6)]
    [InlineData("AT", RoadVehicle.Moped, 1.0)]
    [InlineData("FR", RoadVehicle.Motorcycle, 1.0)]
    [InlineData("US-MD", RoadVehicle.Motorcycle, 0.79375)]
    [InlineData("US-VA", RoadVehicle.Motorcycle, 1.5875)]
    public void Minimum_as_the_law_says_it(string jurisdiction, RoadVehicle vehicle, double minimum) =>
        Assert.Equal(minimum, Judge(5, jurisdiction, vehicle).Certain.Minimum!.Value.Millimetres, 1e-12);

    [Theory]
    [InlineData("de")]
    [InlineData("Germany")]
    [InlineData("GERMANY")]
    public void A_place_goes_by_code_or_name(string place) =>
        Assert.Equal("StVZO § 36", Judge(5, place).Certain.Clause);

    [Theory]
    [InlineData("")]
    [InlineData("Atlantis")]
    [InlineData("DE ")]
    [InlineData("US")]
    public void A_place_that_is_not_in_the_table_is_refused_and_the_known_ones_named(string place)
    {
        var refused = Judge(0.5, place, shop: 2);
        Assert.Equal("unknownJurisdiction", refused.Refusal?.Key);
        foreach (var row in PublishedRows.Of("minimum-tread-depth.csv"))
            Assert.Contains($"{row[0]} ({row[1]})", refused.Refusal!.Because);
        Assert.Equal(1, refused.Refusal!.Because.ToString().Split("Austria").Length - 1);
        Assert.Equal(0.5, refused.Value!.Thinnest.Millimetres);
        Assert.Null(refused.Value.Judged);
    }

    [Theory]
    [InlineData(0.8, 1.0, false, Call.Inside)] // the shop cannot ask for less
    [InlineData(1.0, 1.0, false, Call.Inside)]
    [InlineData(2.0, 2.0, true, Call.Outside)]
    public void The_deeper_of_law_and_shop_counts(double shop, double minimum, bool byShop, Call call)
    {
        var tread = Judge(1.5, shop: shop).Certain;
        Assert.Equal((minimum, byShop), (tread.Minimum!.Value.Millimetres, tread.ByShop));
        Assert.Equal(call, tread.Judged!.Value.Call);
        Assert.StartsWith("Road Vehicles", tread.Clause);
    }

    [Theory]
    [InlineData("GB", true)] // the law asks for a visible pattern
    [InlineData("US-MD", false)] // no law in the table
    public void Without_a_depth_in_law_the_shop_decides(string jurisdiction, bool hasLaw)
    {
        Assert.Equal("noDepthInLaw", Judge(5, jurisdiction, RoadVehicle.Moped).Refusal?.Key);
        var tread = Judge(5, jurisdiction, RoadVehicle.Moped, shop: 1).Certain;
        Assert.Equal((Call.Inside, true), (tread.Judged!.Value.Call, tread.ByShop));
        Assert.Equal(hasLaw, tread.Clause is not null);
    }

    [Fact]
    public void The_place_is_named_where_its_law_is_missing() =>
        Assert.Contains("Maryland", Judge(5, "US-MD", RoadVehicle.Moped).Refusal!.Because);

    // u² = 0.1²/12 + 0.1²/3 = 0.0041666667 mm², u = 0.0645497 mm; 1.644854·u = 0.106175 mm
    [Theory]
    [InlineData(1.1062, Call.Inside)]
    [InlineData(1.1061, Call.Unproven)]
    [InlineData(0.8939, Call.Unproven)]
    [InlineData(0.8938, Call.Outside)]
    public void The_gauge_limits_what_is_proven(double depth, Call call) =>
        Assert.Equal(call, Judge(depth, gauge: new(0.1, 0.1)).Certain.Judged!.Value.Call);

    [Fact]
    public void A_bald_tyre_is_read_as_zero() => Assert.Equal(0, Judge(0).Certain.Thinnest.Millimetres);

    [Fact]
    public void Without_a_reading_it_is_a_bug_of_the_caller() =>
        Assert.Throws<ArgumentException>(() => TreadDepth.Judge([], "GB", RoadVehicle.Motorcycle, Exact));
}
