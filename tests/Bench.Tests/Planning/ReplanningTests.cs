using FsCheck.Xunit;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Planning.Order;
using Witnessmark.Bench.Record;
using Witnessmark.Bench.Tests.Jobs;

namespace Witnessmark.Bench.Tests.Planning;

/// <summary>The rest of a job is planned from where the machine stands, whatever way the technician went.</summary>
public class ReplanningTests
{
    private static readonly DateTimeOffset Now = new(2026, 11, 25, 10, 0, 0, TimeSpan.Zero);

    private static readonly string[] Ways =
    [
        "identity",
        "chain-slack",
        "axle-alignment",
        "axle-nut",
        "coolant-level",
        "engine-warm-up",
        "drain-plug",
        "oil-filter",
        "oil-first-fill",
        "steering-head",
        "road-test",
    ];

    [Property(MaxTest = 40)]
    public void What_is_in_hand_is_not_moved_and_what_is_done_does_not_return(byte[] choices)
    {
        var work = new AtWork().Arrives();
        foreach (var choice in (choices ?? []).Take(12))
            Does(work, Ways[choice % Ways.Length], choice / Ways.Length % 3);
        var state = work.State;
        var asked = WhereItStands.Of(state, AtWork.Bench.Book, Now);
        var order = PlannedOrder.Of(asked, effort: 500).Certain;
        OrderOracle.Check(order);
        Assert.Equal(
            state.Points.Where(p => p.Marked is null && p.Left is null).Select(p => p.Point.Id).Order(),
            order.Points.Order()
        );
        if (state.Entries[^1].Kind == "reading")
        {
            var last = state.Entries[^1].Body.GetProperty("point").GetString()!;
            Assert.Equal(last, asked.InHand);
            Assert.Equal(last, order.Points.First());
        }
    }

    [Fact]
    public void A_marked_point_returns_when_its_mark_is_broken_and_only_then()
    {
        var work = new AtWork().Arrives().DoesWell("chain-slack");
        Assert.DoesNotContain("chain-slack", Open(work));
        work.DoesWell("tyre-dates");
        Assert.DoesNotContain("chain-slack", Open(work));
        work.DoesWell("axle-nut");
        Assert.Contains("chain-slack", Open(work));
    }

    [Fact]
    public void The_machine_stands_as_it_was_last_worked_at()
    {
        var work = new AtWork().Arrives().DoesWell("identity");
        Assert.Empty(Asked(work).Now);
        work.Reads("chain-slack", "60 mm", "37 mm");
        Assert.Equal(["rear stand"], Asked(work).Now);
        Assert.Equal("chain-slack", Asked(work).InHand);
        // the road test is ridden off the stand
        work.DoesWell("road-test");
        Assert.Empty(Asked(work).Now);
        Assert.Null(Asked(work).InHand);
    }

    // entries are written at 9:00 UTC; the engine stays warm for 90 min
    [Theory]
    [InlineData(0, true)]
    [InlineData(89, true)]
    [InlineData(90, false)]
    public void A_warm_engine_is_cold_after_its_time(int minutes, bool warm)
    {
        var work = new AtWork().Arrives().Tightens("drain-plug", "29 N·m");
        var asked = WhereItStands.Of(
            work.State,
            AtWork.Bench.Book,
            new(2026, 11, 25, 9, minutes % 60, 0, TimeSpan.FromHours(-(minutes / 60)))
        );
        Assert.Equal(warm, asked.Now.Contains("engine warm"));
    }

    // the drain plug drips for 10 min
    [Theory]
    [InlineData(0, 10)]
    [InlineData(4, 6)]
    [InlineData(10, 0)]
    [InlineData(-30, 10)] // a clock that is behind cannot lengthen it
    public void A_wait_that_runs_is_waited_out_but_no_longer(int minutes, int left)
    {
        var work = new AtWork().Arrives().DoesWell("drain-plug");
        var asked = WhereItStands.Of(
            work.State,
            AtWork.Bench.Book,
            new DateTimeOffset(2026, 11, 25, 9, 0, 0, TimeSpan.Zero).AddMinutes(minutes)
        );
        Assert.Equal(left, asked.Waiting.TryGetValue("drain-plug", out var wait) ? wait.TotalMinutes : 0);
    }

    [Fact]
    public void A_dropped_point_is_not_planned()
    {
        var work = new AtWork().Arrives();
        work.Writes("dropped", EntryBody.Dropped("keys", "only one exists"));
        Assert.DoesNotContain("keys", Open(work));
    }

    private static OrderQuestion Asked(AtWork work) => WhereItStands.Of(work.State, AtWork.Bench.Book, Now);

    private static IEnumerable<string> Open(AtWork work) => Asked(work).Open.Select(p => p.Id);

    private static void Does(AtWork work, string point, int how)
    {
        if (how == 0)
            work.DoesWell(point);
        else if (how == 1 && point == "chain-slack")
            work.Reads(point, "75 mm", "25 mm").Turns(point, "1");
        else if (how == 1 && !AtWork.Bench.Book.Points[point].Safety)
            work.Leaves(point, "next visit");
        else
            work.Reads("tyre-dates", "3123", "1823");
    }
}
