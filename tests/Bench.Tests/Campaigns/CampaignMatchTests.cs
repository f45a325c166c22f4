using Witnessmark.Bench.Campaigns;

namespace Witnessmark.Bench.Tests.Campaigns;

public class CampaignMatchTests
{
    private const string Inside = "GZ0FE64C8RH000412";
    private const string Below = "GZ0FE64C8RH000399";
    private const string OtherYear = "GZ0FE64C8PH000412";
    private const string Range = "GZ0FE64C0RH000400 to GZ0FE64C1RH000499";
    private static readonly DateOnly Day = new(2024, 2, 1);

    /// <summary>
    /// Every combination of what a campaign may say and what may be known of a machine, against a second statement of the rule:
    /// count the facts that speak against, then those that are missing.
    /// </summary>
    [Fact]
    public void All_combinations_agree_with_the_rule_said_another_way()
    {
        var seen = new HashSet<Concern>();
        foreach (var source in new[] { CampaignSource.Public, CampaignSource.Own })
        foreach (var make in new[] { "TARNMOOR", "Tarn-Moor", "Gritstone" })
        foreach (var model in new[] { "FELL 640", "fell640", "Fell 640 R", "" })
        foreach (var year in new int?[] { 2024, 2023, null })
        foreach (var vins in new string[][] { [], [Range], [Below, Range], [OtherYear] })
        foreach (
            var (from, to) in new (DateOnly?, DateOnly?)[]
            {
                (null, null),
                (Day, null),
                (null, Day),
                (Day.AddDays(1), Day.AddDays(9)),
            }
        )
        foreach (var ownYear in new int?[] { 2024, null })
        foreach (var vin in new string?[] { null, Inside, Below })
        foreach (var built in new DateOnly?[] { null, Day, Day.AddDays(-1), Day.AddDays(1) })
        {
            var campaign = Campaign(source, make, model, year, vins, from, to);
            var machine = new AskedMachine("Tarnmoor", "Fell 640", ownYear, vin, built);
            var match = CampaignMatch.Of(campaign, machine);
            Assert.Equal(Expected(campaign, machine), match.Concern);
            Assert.Equal(match.Concern == Concern.MayConcern, match.Why.ToString().EndsWith(": check with the maker"));
            Assert.NotEmpty(match.Why.ToString());
            seen.Add(match.Concern);
        }
        Assert.Equal(3, seen.Count);
    }

    private static Concern Expected(Campaign campaign, AskedMachine machine)
    {
        static string Bare(string name) => name.ToUpperInvariant().Replace(" ", "").Replace("-", "");
        var (against, missing) = (0, 0);
        if (Bare(campaign.Make) != "TARNMOOR")
            against++;
        if (campaign.Model == "")
            missing++;
        else if (Bare(campaign.Model) != "FELL640")
            against++;
        if (campaign.Year is null || machine.Year is null)
            missing++;
        else if (campaign.Year != machine.Year)
            against++;
        if (campaign.Source == CampaignSource.Public)
            return against > 0 ? Concern.DoesNot : Concern.MayConcern;
        if (campaign.Says.Vins.Count > 0 && machine.Vin is null)
            missing++;
        else if (campaign.Says.Vins.Count > 0)
            // the serial numbers as numbers; the kind without position 9
            against += campaign.Says.Vins.Any(v =>
                Serials(v)
                    .Any(s =>
                        s.Kind == Kind(machine.Vin!) && s.From <= Serial(machine.Vin!) && Serial(machine.Vin!) <= s.To
                    )
            )
                ? 0
                : 1;
        if (campaign.Says is not { BuiltFrom: null, BuiltTo: null } && machine.Built is null)
            missing++;
        else if (campaign.Says.BuiltFrom > machine.Built || campaign.Says.BuiltTo < machine.Built)
            against++;
        return against > 0 ? Concern.DoesNot
            : missing > 0 ? Concern.MayConcern
            : Concern.Concerns;
    }

    private static IEnumerable<(string Kind, int From, int To)> Serials(string range) =>
        [(Kind(range), Serial(range[..17]), Serial(range[^17..]))];

    private static int Serial(string vin) => int.Parse(vin[11..17]);

    private static string Kind(string vin) => vin[..8] + vin[9..11];

    [Fact]
    public void The_public_list_never_says_more_than_may()
    {
        var match = CampaignMatch.Of(Campaign(CampaignSource.Public, "TARNMOOR", "FELL 640", 2024), Machine());
        Assert.Equal(Concern.MayConcern, match.Concern);
        Assert.Equal(
            "the public list does not say which machines of that model and year: check with the maker",
            match.Why
        );
    }

    [Fact]
    public void The_own_list_can_say_that_it_concerns_and_why()
    {
        var match = CampaignMatch.Of(
            Campaign(CampaignSource.Own, "Tarnmoor", "Fell 640", 2024, [Range], Day, Day),
            Machine() with
            {
                Built = Day,
            }
        );
        Assert.Equal(Concern.Concerns, match.Concern);
        Assert.Equal(
            "make, model and year fit, its VIN is among those that are named, it was built in the time that is named",
            match.Why
        );
    }

    [Fact]
    public void Loud_ones_come_first_then_those_that_concern_then_the_newest_and_those_that_do_not_last()
    {
        Campaign[] campaigns =
        [
            Named("A", new(2026, 1, 1)),
            Named("B", new(2026, 2, 1)),
            Named("C", new(2026, 1, 1)) with
            {
                Source = CampaignSource.Own,
            },
            Loud(Named("D", new(2020, 1, 1)), park: true),
            Loud(Named("E", new(2019, 1, 1)), ride: true),
            Loud(
                Named("F", new(2026, 1, 1)) with
                {
                    Source = CampaignSource.Own,
                    Says = Says([OtherYear], null, null),
                },
                ride: true
            ),
        ];
        foreach (var order in new[] { campaigns, [.. campaigns.Reverse()] })
            Assert.Equal("EDCBAF", string.Concat(CampaignMatches.Of(order, Machine()).Select(m => m.Campaign.Number)));
    }

    [Fact]
    public void The_own_record_speaks_for_a_campaign_that_both_lists_have()
    {
        var listed = Campaign(CampaignSource.Public, "TARNMOOR", "FELL 640", 2024);
        var own = Campaign(CampaignSource.Own, "Tarnmoor", "Fell 640", 2024, [OtherYear]) with { Number = "26x 004" };
        var match = Assert.Single(CampaignMatches.Of([listed, own], Machine()));
        Assert.Equal((CampaignSource.Own, Concern.DoesNot), (match.Campaign.Source, match.Concern));
        // an own record of another year says nothing about this one
        Assert.Equal(
            CampaignSource.Public,
            Assert.Single(CampaignMatches.Of([listed, own with { Year = 2022 }], Machine())).Campaign.Source
        );
    }

    [Fact]
    public void Other_makes_models_and_years_are_not_worth_telling() =>
        Assert.Empty(
            CampaignMatches.Of(
                [
                    Campaign(CampaignSource.Own, "Gritstone", "Fell 640", 2024),
                    Campaign(CampaignSource.Public, "Tarnmoor", "Fell 640 R", 2024),
                    Campaign(CampaignSource.Own, "Tarnmoor", "Fell 640", 2023),
                ],
                Machine()
            )
        );

    [Fact]
    public void Open_is_what_concerns_or_may_and_is_not_settled_however_its_number_is_written()
    {
        var matches = CampaignMatches.Of(
            [
                Named("26X-004", Day),
                Named("26X-005", Day),
                Named("26X-006", Day) with
                {
                    Source = CampaignSource.Own,
                },
                Named("26X-007", Day) with
                {
                    Source = CampaignSource.Own,
                    Says = Says([OtherYear], null, null),
                },
            ],
            Machine()
        );
        Assert.Equal(["26X-006", "26X-005"], OpenCampaigns.Of(matches, ["26x 004"]).Select(m => m.Campaign.Number));
        Assert.Empty(OpenCampaigns.Of(matches, ["26X-004", "26X-005", "26X-006"]));
        FoundCampaign[] found =
        [
            new("26X-004", "Tank", false, false, true),
            new("TW-31", "Switch", true, false, false),
        ];
        Assert.Equal(found[1], Assert.Single(OpenCampaigns.Of(found, ["26X004"])));
    }

    [Theory]
    [InlineData("Fell-640 R", "FELL 640R", true)]
    [InlineData("fell.640", "Fell 640", true)]
    [InlineData("Fell 640", "Fell 64 0", true)]
    [InlineData("Fell 640", "Fell 640 R", false)]
    [InlineData("Fell 640", "Fell 64", false)]
    [InlineData("Öx 5", "ÖX5", true)]
    [InlineData("Öx 5", "OX5", false)]
    public void One_name_in_several_spellings(string one, string other, bool same) =>
        Assert.Equal(same, NameKey.Of(one) == NameKey.Of(other));

    [Theory]
    [InlineData("GZ0FE64C0RH000400 to GZ0FE64C1RH000499", "GZ0FE64C8RH000400", true)]
    [InlineData("GZ0FE64C0RH000400 to GZ0FE64C1RH000499", "GZ0FE64C8RH000499", true)]
    [InlineData("GZ0FE64C0RH000400 to GZ0FE64C1RH000499", "GZ0FE64C8RH000399", false)]
    [InlineData("GZ0FE64C0RH000400 to GZ0FE64C1RH000499", "GZ0FE64C8RH000500", false)]
    [InlineData("GZ0FE64C0RH000400 to GZ0FE64C1RH000499", "GZ0FE64C8PH000450", false)]
    [InlineData("GZ0FE64C0RH000400 to GZ0FE64C1RH000499", "GZ0FE64D8RH000450", false)]
    [InlineData("GZ0FE64C0RH000400 to GZ0FE64C1RH000499", "GZ0FE64C8RJ000450", false)]
    [InlineData("GZ0FE64C0RH000400 to GZ0FE64C1RH000499", "450", false)]
    [InlineData("GZ0FE64C8RH000412", "GZ0FE64C8RH000412", true)]
    [InlineData("GZ0FE64C8RH000412", "GZ0FE64C8RH000413", false)]
    public void A_range_of_VINs(string range, string vin, bool held) =>
        Assert.Equal(held, VinRange.Read(range).Range!.Holds(vin));

    [Theory]
    [InlineData("GZ0FE64C0RH000499 to GZ0FE64C0RH000400", "the ends are swapped")]
    [InlineData("GZ0FE64C0RH000400 to GZ0FE64C0PH000499", "the two ends differ before their serial numbers")]
    [InlineData(
        "GZ0FE64C0RH00040 to GZ0FE64C0RH000499",
        "\"GZ0FE64C0RH00040\" has not 17 digits and capital letters without I, O and Q"
    )]
    [InlineData("gz0fe64c0rh000400", "\"gz0fe64c0rh000400\" has not 17 digits and capital letters without I, O and Q")]
    [InlineData("A to B to C", "more than one \"to\"")]
    public void A_range_that_is_none(string text, string why) => Assert.Equal(why, VinRange.Read(text).Why);

    [Theory]
    [InlineData('I')]
    [InlineData('O')]
    [InlineData('Q')]
    public void Three_letters_are_in_no_VIN(char letter) => Assert.False(VinRange.IsVin(Inside.Replace('E', letter)));

    private static AskedMachine Machine() => new("Tarnmoor", "Fell 640", 2024, Inside);

    private static Campaign Named(string number, DateOnly recorded)
    {
        var campaign = Campaign(CampaignSource.Public, "TARNMOOR", "FELL 640", 2024);
        return campaign with { Number = number, Says = campaign.Says with { Recorded = recorded } };
    }

    private static Campaign Loud(Campaign campaign, bool ride = false, bool park = false) =>
        campaign with
        {
            Says = campaign.Says with { DoNotRide = ride, ParkOutside = park },
        };

    private static Campaign Campaign(
        CampaignSource source,
        string make,
        string model,
        int? year,
        string[]? vins = null,
        DateOnly? from = null,
        DateOnly? to = null
    ) => new(source, "26X-004", make, model, year, "TANK", Says(vins ?? [], from, to));

    private static CampaignText Says(string[] vins, DateOnly? from, DateOnly? to) =>
        new("", "", from, to, null, null, "d", "c", "r", "", null, null, vins);
}
