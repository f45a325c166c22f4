using System.Text.Json;
using Witnessmark.Handbook.BenchOrder;
using Witnessmark.Handbook.Catalogue;
using Witnessmark.Handbook.Quantities;
using Order = Witnessmark.Handbook.BenchOrder.BenchOrder;

namespace Witnessmark.Handbook.Tests.BenchOrder;

// The rules one by one; numbers by hand, in minutes
public class BenchOrderRulesTests
{
    private static readonly Dictionary<string, bool> Nothing = [];

    [Fact]
    public void Hands_work_while_another_task_waits()
    {
        var plan = Plan([], [Task("cure", 5, 30), Task("fit", 5, 0, after: ["cure"]), Task("clean", 20)]);
        Assert.Equal(40, plan.Makespan.Seconds / 60);
        Assert.Equal(["cure", "clean", "fit"], plan.Schedule.Select(s => s.Do));
    }

    [Fact]
    public void The_last_wait_counts() => Assert.Equal(35, Makespan([], [Task("cure", 5, 30)]));

    [Fact]
    public void Cooling_runs_from_the_start_when_warm_at_the_start() =>
        Assert.Equal(
            70,
            Makespan(
                [State("engine", true, cool: 60)],
                [Task("valves", 10, needs: [("engine", false)]), Task("pads", 8)]
            )
        );

    [Fact]
    public void Cooling_runs_from_the_last_task_that_needed_warmth() =>
        Assert.Equal(
            3 + 60 + 10,
            Makespan(
                [State("engine", true, cool: 60)],
                [
                    Task("drain", 3, needs: [("engine", true)]),
                    Task("valves", 10, after: ["drain"], needs: [("engine", false)]),
                ]
            )
        );

    [Fact]
    public void Cooling_runs_from_setting_when_nothing_needed_it_since()
    {
        var states = new[] { State("engine", false, set: 7, cool: 60, final: false) };
        Assert.Equal(7 + 2 + 60, Makespan(states, [Task("run", 2, needs: [("engine", true)])]));
    }

    [Fact]
    public void A_clear_with_hands_and_a_time_to_cool_begins_after_it()
    {
        var states = new[] { State("clamp", true, clear: 4, cool: 30, final: false) };
        var plan = Plan(states, [Task("look", 5)]);
        Assert.Equal(34, plan.Makespan.Seconds / 60);
        Assert.Equal(30, plan.Schedule.Single(s => s.Do == "clear:clamp").Start.Seconds / 60);
    }

    [Fact]
    public void Cooling_takes_no_hands_and_stands_where_it_is_over()
    {
        var plan = Plan(
            [State("engine", true, cool: 60)],
            [Task("pads", 20), Task("valves", 10, needs: [("engine", false)])]
        );
        var cold = plan.Schedule.Single(s => s.Do == "clear:engine");
        Assert.Equal((60, 60), (cold.Start.Seconds / 60, cold.End.Seconds / 60));
    }

    [Fact]
    public void The_machine_may_stay_warm_longer_than_it_must() =>
        Assert.Equal(
            100,
            Makespan(
                [State("engine", true, cool: 60)],
                [Task("pads", 90), Task("drain", 10, after: ["pads"], needs: [("engine", true)])]
            )
        );

    [Fact]
    public void What_a_state_requires_holds_as_long_as_it_does()
    {
        var states = new[]
        {
            State("stand", false, set: 2, clear: 2, final: false),
            State("wheel", false, set: 10, clear: 14, final: false, requires: [("stand", true)]),
        };
        var plan = Plan(states, [Task("pads", 7, needs: [("wheel", true)])]);
        Assert.Equal(["set:stand", "set:wheel", "pads", "clear:wheel", "clear:stand"], plan.Schedule.Select(s => s.Do));
        Assert.Equal(35, plan.Makespan.Seconds / 60);
    }

    [Fact]
    public void A_final_state_left_out_is_free() =>
        Assert.Equal(9, Makespan([State("seat", false, set: 2, clear: 2)], [Task("plug", 7, needs: [("seat", true)])]));

    [Fact]
    public void Tasks_in_a_ring_are_refused_by_name()
    {
        var refusal = Refused(
            [],
            [Task("a", 1), Task("b", 1, after: ["d"]), Task("c", 1, after: ["b"]), Task("d", 1, after: ["c", "a"])]
        );
        Assert.Equal("cycle", refusal.Key);
        Assert.Contains("b, then c, then d, then b", refusal.Because);
    }

    [Fact]
    public void A_task_after_itself_is_refused() =>
        Assert.Equal("cycle", Refused([], [Task("a", 1, after: ["a"])]).Key);

    [Fact]
    public void A_task_that_contradicts_what_its_state_requires_is_refused()
    {
        var states = new[] { State("stand", false), State("wheel", false, requires: [("stand", true)]) };
        var refusal = Refused(states, [Task("odd", 1, needs: [("wheel", true), ("stand", false)])]);
        Assert.Equal("unreachable", refusal.Key);
        Assert.Contains("odd", refusal.Because);
        Assert.Contains("stand", refusal.Because);
    }

    [Fact]
    public void What_cannot_be_undone_is_done_after_all_that_needs_it_undone()
    {
        var states = new[] { new BenchState("sealed", false, new(60)) };
        var plan = Plan(
            states,
            [Task("close", 1, needs: [("sealed", true)]), Task("look", 1, needs: [("sealed", false)])]
        );
        Assert.Equal(["look", "set:sealed", "close"], plan.Schedule.Select(s => s.Do));
        var refusal = Refused(
            states,
            [Task("close", 1, needs: [("sealed", true)]), Task("look", 1, after: ["close"], needs: [("sealed", false)])]
        );
        Assert.Equal("unreachable", refusal.Key);
        Assert.Contains("sealed", refusal.Because);
    }

    [Fact]
    public void States_that_require_each_other_are_refused() =>
        Assert.Equal(
            "unreachable",
            Refused(
                [State("a", false, requires: [("b", true)]), State("b", false, requires: [("a", true)])],
                [Task("t", 1)]
            ).Key
        );

    [Fact]
    public void A_start_without_what_it_requires_is_refused() =>
        Assert.Equal(
            "unreachable",
            Refused([State("stand", false), State("wheel", true, requires: [("stand", true)])], [Task("t", 1)]).Key
        );

    [Fact]
    public void What_stays_on_cannot_end_off() =>
        Assert.Equal(
            "unreachable",
            Refused([new BenchState("worn", true, new(0)) { Final = false }], [Task("t", 1)]).Key
        );

    // J. Carlier, The one-machine sequencing problem, European Journal of Operational Research 11 (1982), the example of 7 jobs
    // (from memory): heads become tasks of no hands that wait. Optimum 50, where serving the longest tail first gives 53;
    // every sequence tried again here.
    [Fact]
    public void Carliers_seven_jobs()
    {
        int[] heads = [10, 13, 11, 20, 30, 0, 30];
        int[] lengths = [5, 6, 7, 4, 3, 6, 2];
        int[] tails = [7, 26, 24, 21, 8, 17, 0];
        var tasks = heads
            .SelectMany((h, i) => new[] { Task($"h{i}", 0, h), Task($"j{i}", lengths[i], tails[i], after: [$"h{i}"]) })
            .ToArray();
        Assert.Equal(50, Least(0, [.. Enumerable.Range(0, 7)]));
        Assert.Equal(50, Makespan([], tasks));

        int Least(int time, int[] left) =>
            left.Length == 0
                ? 0
                : left.Min(j =>
                {
                    var end = Math.Max(time, heads[j]) + lengths[j];
                    return Math.Max(end + tails[j], Least(end, [.. left.Where(i => i != j)]));
                });
    }

    [Theory]
    [InlineData(""" "after":["x"],"needs":{} """, "tasks.0.after")]
    [InlineData(""" "after":[],"needs":{"x":1} """, "tasks.0.needs")]
    [InlineData(""" "after":[],"needs":{"stand":2} """, "tasks.0.needs.stand")]
    [InlineData(""" "after":[],"needs":{"stand":1,"stand":1} """, "tasks.0.needs.stand")]
    [InlineData(""" "needs":{} """, "tasks.0.after")]
    public void A_malformed_task_is_named(string rest, string key)
    {
        var given = $$"""
            {"states":[{"name":"stand","initial":0,"set":"2 min"}],
             "tasks":[{"id":"a","hands":"1 min","waitAfter":"0 min",{{rest}}}]}
            """;
        var reply = Calculations.Named("bench-order")!.Ask(JsonDocument.Parse(given).RootElement);
        Assert.StartsWith(key + ":", reply.Malformed);
    }

    private static double Makespan(BenchState[] states, BenchTask[] tasks) => Plan(states, tasks).Makespan.Seconds / 60;

    private static BenchPlan Plan(BenchState[] states, BenchTask[] tasks)
    {
        var plan = Order.For(states, tasks).Certain;
        Replay.Check(states, tasks, plan);
        Assert.True(plan.Proven);
        return plan;
    }

    private static Refusal Refused(BenchState[] states, BenchTask[] tasks) => Order.For(states, tasks).Refusal!;

    private static BenchState State(
        string name,
        bool initial,
        int set = 1,
        int? clear = null,
        int? cool = null,
        bool? final = null,
        (string, bool)[]? requires = null
    ) =>
        new(name, initial, new(60 * set))
        {
            Clear = clear is { } c ? new Duration(60 * c) : null,
            ClearAfter = cool is { } w ? new Duration(60 * w) : null,
            Final = final,
            Requires = Values(requires),
        };

    private static BenchTask Task(
        string id,
        int hands,
        int wait = 0,
        string[]? after = null,
        (string, bool)[]? needs = null
    ) => new(id, new(60 * hands), new(60 * wait), after ?? [], Values(needs));

    private static Dictionary<string, bool> Values((string Name, bool On)[]? values) =>
        values?.ToDictionary(v => v.Name, v => v.On) ?? Nothing;
}
