using Witnessmark.Bench.Day;

namespace Witnessmark.DaySolver.Tests;

public class DaySearchTests
{
    // by hand: one lift, one pair of hands; the short promised one first, or it is late by the long one's length
    [Fact]
    public void The_earlier_promise_comes_first_on_the_only_lift()
    {
        var day = Days.Of(Days.Job("1", 120, Days.At(12)), Days.Job("2", 60, Days.At(9)));
        var solved = DaySearch.Solve(day);
        Assert.Equal([Days.At(8)], solved.Plan.Of("2")!.Starts);
        Assert.Equal([Days.At(9)], solved.Plan.Of("1")!.Starts);
        Assert.Equal(new DayMeasure(0, 180, 0), solved.Measure);
        Assert.True(solved.Proven);
    }

    // by hand: with two lifts the hands go to the second machine while the first one drains; with one they cannot
    [Fact]
    public void A_wait_frees_the_technician_but_not_the_lift()
    {
        DayJob[] jobs =
        [
            new("1", "A", [new($"drain", 30, 60), new($"fill", 30, 0)], Days.At(10)),
            Days.Job("2", 60, Days.At(10, 30)),
        ];
        var two = DaySearch.Solve(Days.Of(jobs) with { Lifts = ["Lift 1", "Lift 2"] });
        Assert.Equal(0, two.Measure.Lateness);
        Assert.NotEqual(two.Plan.Of("1")!.Lift, two.Plan.Of("2")!.Lift);
        var one = DaySearch.Solve(Days.Of(jobs));
        Assert.Equal(30, one.Measure.Lateness); // the second one alone from 10:00 to 11:00
        Assert.True(one.Proven);
    }

    // by hand: 3 h before lunch, 2 h that do not fit into what is left of it
    [Fact]
    public void No_step_goes_over_lunch_or_night()
    {
        var solved = DaySearch.Solve(Days.Of(Days.Job("1", 180, Days.At(11)), Days.Job("2", 120), Days.Job("3", 180)));
        foreach (var placed in solved.Plan.Jobs)
            Assert.Contains(Days.Open, o => o.From <= placed.Starts[0] && placed.Ready(Job(placed)) <= o.To);
        DayJob Job(PlacedJob placed) => Days.Job(placed.Job, placed.Job == "2" ? 120 : 180);
    }

    [Fact]
    public void What_is_begun_is_not_moved()
    {
        var begun = Days.Job("1", 120) with { Held = new("Bram", Days.At(7, 45), "Lift 2", Begun: true) };
        var day = Days.Of(begun, Days.Job("2", 60, Days.At(9))) with
        {
            Technicians = [Days.Ines, Days.Bram],
            Lifts = ["Lift 1", "Lift 2"],
        };
        var solved = DaySearch.Solve(day);
        Assert.Equivalent(new PlacedJob("1", "Bram", "Lift 2", [Days.At(7, 45)]), solved.Plan.Of("1"));
        Assert.Equal("Ines", solved.Plan.Of("2")!.Technician);
        Assert.Empty(solved.Loosened);
    }

    [Fact]
    public void A_place_by_hand_is_kept_though_it_costs_lateness()
    {
        var held = Days.Job("1", 60) with { Held = new("Ines", Days.At(8)) };
        var solved = DaySearch.Solve(Days.Of(held, Days.Job("2", 60, Days.At(9))));
        Assert.Equal([Days.At(8)], solved.Plan.Of("1")!.Starts);
        Assert.Equal(60, solved.Measure.Lateness);
    }

    [Fact]
    public void Of_two_places_by_hand_that_meet_the_later_is_left_to_the_plan_and_said()
    {
        var solved = DaySearch.Solve(
            Days.Of(
                Days.Job("1", 60) with
                {
                    Held = new("Ines", Days.At(9)),
                },
                Days.Job("2", 60) with
                {
                    Held = new("Ines", Days.At(9, 30)),
                }
            )
        );
        Assert.Equal([Days.At(9)], solved.Plan.Of("1")!.Starts);
        var loosened = Assert.Single(solved.Loosened);
        Assert.Equal("2", loosened.Job);
        Assert.Equal("Ines is at Machine 1 (1) from 09:00 to 10:00.", loosened.Words);
    }

    // by hand: two machines, one hour each, 15 min of opening hours left, then a night
    [Fact]
    public void A_night_on_the_lift_costs_no_bench_time()
    {
        var day = Days.Of(new DayJob("1", "A", [new($"strip", 60, 0), new($"build", 180, 0)])) with
        {
            Now = Days.At(16),
        };
        var solved = DaySearch.Solve(day);
        Assert.Equal([Days.At(16), Days.At(8, 0, 1)], solved.Plan.Of("1")!.Starts);
        Assert.Equal(new DayMeasure(0, 240, 0), solved.Measure);
    }

    [Fact]
    public void A_job_that_has_no_place_is_named_and_the_others_are_planned()
    {
        var solved = DaySearch.Solve(
            Days.Of(
                Days.Job("1", 60) with
                {
                    Skills = ["paint"],
                },
                Days.Job("2", 500),
                Days.Job("3", 0),
                Days.Job("4", 60)
            ) with
            {
                Technicians = [Days.Bram],
            }
        );
        Assert.Equal(["4"], solved.Plan.Jobs.Select(p => p.Job));
        Assert.Equal(
            [
                "Nobody in the shop has the skill paint.",
                "\"work 2\" takes 8 h 20 min in one piece; nobody who can do it is there as long without a break.",
                "\"work 3\" has 0 min of hands-on work; 1 to 1440 min is allowed.",
            ],
            solved.Without.Select(w => w.Words.ToString())
        );
    }

    [Fact]
    public void Nothing_to_do_is_a_plan()
    {
        var solved = DaySearch.Solve(Days.Of());
        Assert.Empty(solved.Plan.Jobs);
        Assert.True(solved.Proven);
    }
}
