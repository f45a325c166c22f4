using Witnessmark.Bench.Expectations;
using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Machines;
using Witnessmark.Bench.Tests.Visits;
using Witnessmark.Handbook.Due;

namespace Witnessmark.Bench.Tests.Expectations;

/// <summary>
/// The next work, by the schedule of the demo's sheet: oil-filter every 10000 km or 12 months, chain-slack every 1000 km, front-pads every
/// 5000 km or 12 months, valve-clearances every 24000 km, the first time at 24000 km. Sums and calendar by hand.
/// </summary>
public class ServicesAheadTests
{
    [Fact]
    public void What_was_done_in_this_job_is_counted_from_it()
    {
        var ahead = Of(Oiled(new ManyVisits().Comes("2026-03-10", 12_000)));
        Assert.Equal((22_000, new DateOnly(2027, 3, 10)), When(ahead, "oil-filter"));
        Assert.Equal((13_000, null), When(ahead, "chain-slack"));
        Assert.Equal((24_000, null), When(ahead, "valve-clearances"));
        Assert.Equal(
            "Oil filter changed".Split(' ')[0],
            ahead.Services.First(s => s.Point == "oil-filter").Title.Split(' ')[0]
        );
        Assert.Null(ahead.NotReadSince);
        Assert.All(ahead.Services, s => Assert.Equal(OriginKind.Maker, s.Origin.Kind));
    }

    [Fact]
    public void What_was_done_in_an_earlier_visit_is_counted_from_that()
    {
        var work = Oiled(new ManyVisits().Comes("2026-03-10", 12_000)).Comes("2026-09-01", 15_000);
        Assert.Equal((22_000, new DateOnly(2027, 3, 10)), When(Of(work), "oil-filter"));
        // the visit that was not told of does not count: then nothing is on record
        Assert.Equal((null, null), When(Of(work, tell: false), "oil-filter"));
    }

    [Fact]
    public void What_nobody_wrote_down_is_treated_as_due()
    {
        var pads = Of(new ManyVisits().Comes("2026-03-10", 12_000)).Services.First(s => s.Point == "front-pads");
        Assert.Equal((DueState.Due, null, null), (pads.State, pads.AtKilometres, pads.ByDay));
        Assert.Equal("not on record: unknown, treat as due", pads.Unknown);
    }

    [Fact]
    public void Overdue_is_beyond_the_distance_and_due_is_on_it()
    {
        var done = Oiled(new ManyVisits().Comes("2026-03-10", 12_000));
        Assert.Equal(DueState.Due, State(done.Comes("2026-04-10", 13_000)));
        Assert.Equal(DueState.Overdue, State(done.Comes("2026-04-11", 13_001)));

        static DueState State(ManyVisits work) => Of(work).Services.First(s => s.Point == "chain-slack").State;
    }

    [Fact]
    public void Without_a_reading_of_the_odometer_the_last_distance_counts_and_its_day_is_told()
    {
        var ahead = Of(new ManyVisits().Comes("2026-03-10", null));
        Assert.Equal(new DateOnly(2024, 1, 1), ahead.NotReadSince);
        Assert.Equal((24_000, null), When(ahead, "valve-clearances"));
    }

    [Fact]
    public void Without_any_distance_what_goes_by_date_still_does_and_the_rest_is_unknown()
    {
        var unread = ManyVisits.Machine with { LastDistanceKilometres = null, LastDistanceOn = null };
        var ahead = Of(Oiled(new ManyVisits().Comes("2026-03-10", null, unread)));
        Assert.Equal((null, new DateOnly(2027, 3, 10)), When(ahead, "oil-filter"));
        Assert.Equal((null, null), When(ahead, "chain-slack"));
        Assert.Equal(4, ahead.Services.Count);
        Assert.All(ahead.Services, s => Assert.Contains("by distance nobody can tell", s.Unknown));
        Assert.Null(ahead.NotReadSince);
    }

    [Fact]
    public void An_odometer_that_went_back_makes_the_distance_unknown()
    {
        var work = Oiled(new ManyVisits().Comes("2026-03-10", 12_000)).Comes("2026-09-01", 300);
        var chain = Of(work).Services.First(s => s.Point == "chain-slack");
        Assert.Equal((DueState.Due, null), (chain.State, chain.AtKilometres));
        Assert.StartsWith("the odometer went back since it was last done", chain.Unknown);
    }

    [Fact]
    public void The_machines_of_others_say_nothing_and_the_same_frame_under_another_name_does()
    {
        var other = ManyVisits.Machine with { Id = "18", Vin = "GZ0FE64C7PH000978" };
        var again = ManyVisits.Machine with { Id = "19" };
        Assert.Equal((null, null), When(After(other), "oil-filter"));
        Assert.Equal((22_000, new DateOnly(2027, 3, 10)), When(After(again), "oil-filter"));

        static Outlook After(Machine first) =>
            Of(Oiled(new ManyVisits().Comes("2026-03-10", 12_000, first, first.Id)).Comes("2026-09-01", 15_000));
    }

    [Theory]
    [InlineData("12000 km", 22_000, "22000 km")]
    [InlineData("7456.5 mi", 22_000, "13670 mi")] // 22000 / 1.609344
    public void Distances_are_shown_as_the_odometer_shows_them(string read, double kilometres, string shown)
    {
        var job = new ManyVisits().Comes("2026-03-10", null).Reads("distance", read).Jobs[^1];
        var ahead = Outlook.Of(job, ManyVisits.Bench, []);
        Assert.Equal(shown, Distances.Shown(kilometres, ahead.Odometer));
    }

    [Fact]
    public void A_job_that_nobody_opened_expects_nothing()
    {
        var none = Outlook.Of(JobFold.Of("1", [], ManyVisits.Bench), ManyVisits.Bench, []);
        Assert.Empty(none.Services);
        Assert.Empty(none.Wear);
    }

    private static ManyVisits Oiled(ManyVisits work) =>
        work.ReadsAll("oil-filter", "yes").Reads("chain-slack", "60 mm", "40 mm").Marks("oil-filter", "chain-slack");

    private static Outlook Of(ManyVisits work, bool tell = true) =>
        Outlook.Of(work.Jobs[^1], ManyVisits.Bench, tell ? work.Jobs : []);

    private static (double? Kilometres, DateOnly? Day) When(Outlook ahead, string point)
    {
        var service = ahead.Services.Single(s => s.Point == point);
        return (service.AtKilometres is { } km ? Math.Round(km, 6) : null, service.ByDay);
    }
}
