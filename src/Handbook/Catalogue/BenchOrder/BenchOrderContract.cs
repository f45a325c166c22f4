using System.Text.Json;
using System.Text.Json.Nodes;
using Witnessmark.Handbook.BenchOrder;
using Witnessmark.Handbook.Quantities;
using Order = Witnessmark.Handbook.BenchOrder.BenchOrder;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The contract of <c>bench-order</c>.</summary>
internal static class BenchOrderContract
{
    private static readonly Input<string> Name = Take.Words("name", "name of the state");
    private static readonly Input<int> Initial = Take.Count("initial", "how it is at the start", 0, 1);
    private static readonly Input<int> Final = Take.Count("final", "how it must be at the end", 0, 1).OrNothing() with
    {
        Default = "free",
    };
    private static readonly Input<Duration> Set = Time("set", "hands-on time from 0 to 1");
    private static readonly Input<Duration> Clear = Time("clear", "hands-on time from 1 to 0").OrNothing() with
    {
        Default = "no hands with clearAfter; without it cannot be undone",
    };
    private static readonly Input<Duration> ClearAfter = Time(
            "clearAfter",
            "unattended time before 1 may become 0, after the last task that needed 1"
        )
        .OrNothing();
    private static readonly Input<Dictionary<string, bool>> Requires = Values(
            "requires",
            "how other states must be while this one is 1"
        )
        .Or([], "nothing");
    private static readonly Input<BenchState[]> States = Take.Objects(
        "states",
        $"the ways the machine can be, at most {Order.MostStates}",
        [Name, Initial, Final, Set, Clear, ClearAfter, Requires],
        ReadState,
        0
    );

    private static readonly Input<string> Id = Take.Words("id", "name of the task");
    private static readonly Input<Duration> Hands = Time("hands", "hands-on time");
    private static readonly Input<Duration> WaitAfter = Time("waitAfter", "unattended time before what follows");
    private static readonly Input<string[]> After = Take.List(Take.Words("after", "tasks that come before"), 0);
    private static readonly Input<Dictionary<string, bool>> Needs = Values("needs", "how states must be meanwhile");
    private static readonly Input<BenchTask[]> Tasks = Take.Objects(
        "tasks",
        $"what is to be done, at most {Order.MostTasks}",
        [Id, Hands, WaitAfter, After, Needs],
        g => new BenchTask(g.Of(Id), g.Of(Hands), g.Of(WaitAfter), g.Of(After), g.Of(Needs))
    );

    public static Calculation Calculation { get; } =
        new(
            "bench-order",
            "BenchOrder",
            "The order of tasks that takes the least time at the bench.",
            "own derivation, optimum checked by independent searches (docs/handbook/bench-order.md)",
            typeof(Order),
            [States, Tasks],
            [
                new("makespan", "min", "until all is done, waited out and put back"),
                new("handsOn", "min", "hands-on time of the tasks, changes of state not counted"),
                new("schedule", "list", "do (a task, set:STATE or clear:STATE), start (min), end (min), in order"),
                new("proven", "true or false", "whether no order is shorter"),
                new("lowerBound", "min", "when not proven: no order is shorter than this"),
            ],
            Arrange
        );

    private static Reply Arrange(Given given)
    {
        var states = given.Of(States);
        var tasks = given.Of(Tasks);
        CheckNames(given, states, tasks);
        return Reply.To(
            Order.For(states, tasks),
            r =>
                new Gives()
                    .With("makespan", r.Makespan, "min")
                    .With("handsOn", r.HandsOn, "min")
                    .With("schedule", new JsonArray([.. r.Schedule.Select(Step)]))
                    .With("proven", r.Proven)
                    .With("lowerBound", r.LowerBound, "min")
        );
    }

    private static JsonNode Step(BenchStep step) =>
        new Gives().With("do", step.Do).With("start", step.Start, "min").With("end", step.End, "min").Json;

    private static BenchState ReadState(Given g) =>
        new(g.Of(Name), g.Of(Initial) == 1, g.Of(Set))
        {
            Final = g.Maybe(Final) is { } final ? final == 1 : null,
            Clear = g.Maybe(Clear),
            ClearAfter = g.Maybe(ClearAfter),
            Requires = g.Of(Requires),
        };

    private static void CheckNames(Given given, BenchState[] states, BenchTask[] tasks)
    {
        if (states.Length > Order.MostStates)
            throw given.Wrong("states", $"{states.Length} states", $"at most {Order.MostStates}");
        if (tasks.Length > Order.MostTasks)
            throw given.Wrong("tasks", $"{tasks.Length} tasks", $"at most {Order.MostTasks}");
        var names = Unique(given, "states", "name", [.. states.Select(s => s.Name)]);
        var ids = Unique(given, "tasks", "id", [.. tasks.Select(t => t.Id)]);
        for (var i = 0; i < states.Length; i++)
            Known(given, $"states.{i}.requires", states[i].Requires.Keys, names);
        for (var i = 0; i < tasks.Length; i++)
        {
            Known(given, $"tasks.{i}.needs", tasks[i].Needs.Keys, names);
            Known(given, $"tasks.{i}.after", tasks[i].After, ids);
        }
    }

    private static HashSet<string> Unique(Given given, string list, string key, string[] names)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        for (var i = 0; i < names.Length; i++)
            if (!seen.Add(names[i]))
                throw given.Wrong($"{list}.{i}.{key}", $"\"{names[i]}\" again", "each name once");
        return seen;
    }

    private static void Known(Given given, string path, IEnumerable<string> names, HashSet<string> known)
    {
        if (names.FirstOrDefault(n => !known.Contains(n)) is { } stranger)
            throw given.Wrong(path, $"\"{stranger}\" is not known", string.Join(", ", known));
    }

    private static Input<Duration> Time(string name, string meaning) =>
        Take.Bounded<Duration>(name, meaning, b => b >= 0 && b <= Order.Longest.Seconds, "0 to 1000 day");

    private static Input<Dictionary<string, bool>> Values(string name, string meaning) =>
        new(name, "object, each state's name with 0 or 1", meaning, ReadValues) { Shape = InputShape.Names };

    private static Dictionary<string, bool> ReadValues(JsonElement e, string path)
    {
        if (e.ValueKind != JsonValueKind.Object)
            throw new MalformedGiven(path, Given.Found(e), "an object of names with 0 or 1");
        var values = new Dictionary<string, bool>(StringComparer.Ordinal);
        foreach (var property in e.EnumerateObject())
        {
            var key = Given.At(path, property.Name);
            if (
                property.Value.ValueKind != JsonValueKind.Number
                || !property.Value.TryGetInt32(out var value)
                || value is not (0 or 1)
            )
                throw new MalformedGiven(key, Given.Found(property.Value), "0 or 1");
            if (!values.TryAdd(property.Name, value == 1))
                throw new MalformedGiven(key, "given twice", "each name once");
        }
        return values;
    }
}
