using Witnessmark.Handbook.Tests.Catalogue;

namespace Witnessmark.Handbook.Tests.BenchOrder;

public class BenchOrderRequestTests
{
    private const string State =
        """{"name":"lift","initial":0,"final":0,"set":"1 min","clear":"1 min","requires":{}}""";
    private const string Task = """{"id":"drain","hands":"5 min","waitAfter":"10 min","after":[],"needs":{"lift":1}}""";

    public static TheoryData<string, string?> Requests =>
        new()
        {
            { Of([State], [Task]), null },
            { Of([State], [Task.Replace("5 min", "1000 day")]), null },
            { Of([State], [Task.Replace("5 min", "1001 day")]), "tasks.0.hands: \"1001 day\"" },
            { Of([State], [Task.Replace("5 min", "0 min")]), null },
            { Of([State], [Task.Replace("5 min", "-1 min")]), "tasks.0.hands: \"-1 min\"" },
            { Of([State.Replace("\"initial\":0", "\"initial\":2")], [Task]), "states.0.initial: 2" },
            { Of([State, State], [Task]), "states.1.name: \"lift\" again" },
            { Of([State], [Task, Task]), "tasks.1.id: \"drain\" again" },
            {
                Of([State], [Task.Replace("\"lift\"", "\"jack\"")]),
                "tasks.0.needs: \"jack\" is not known; allowed: lift"
            },
            { Of([State], [Task.Replace("[]", "[\"fill\"]")]), "tasks.0.after: \"fill\" is not known; allowed: drain" },
            { Of([State.Replace("{}", "{\"jack\":1}")], [Task]), "states.0.requires: \"jack\" is not known" },
            { Of([State.Replace("{}", "[]")], [Task]), "states.0.requires" },
            { Of([State], [Task.Replace("\"lift\":1", "\"lift\":2")]), "tasks.0.needs.lift" },
            { Of([State], [Task.Replace("\"lift\":1", "\"lift\":\"1\"")]), "tasks.0.needs.lift" },
            { Of(Many(State, "lift", 32), [Task]), null },
            { Of(Many(State, "lift", 33), [Task]), "states: 33 states; allowed: at most 32" },
            { Of([State], Many(Task, "drain", 129)), "tasks: 129 tasks; allowed: at most 128" },
        };

    private static string[] Many(string one, string name, int count) =>
        [.. Enumerable.Range(0, count).Select(i => i == 0 ? one : one.Replace($"\"{name}\"", $"\"{name}{i}\""))];

    private static string Of(string[] states, string[] tasks) =>
        $$"""{"states":[{{string.Join(',', states)}}],"tasks":[{{string.Join(',', tasks)}}]}""";

    [Theory]
    [MemberData(nameof(Requests))]
    public void A_mistake_is_told_with_its_key_and_what_is_allowed(string given, string? told)
    {
        var reply = CaseFiles.Ask("bench-order", given);
        if (told is not null)
            Assert.Contains(told, reply.Malformed);
        else
            Assert.Equal((null, null), (reply.Malformed, reply.Refusal));
    }
}
