using System.Text.Json.Nodes;
using FsCheck.Xunit;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Tests.Catalogue;

public class UnitChangeTests
{
    // The relative error that a change of unit and back may bring: a few roundings, enlarged by the differences of squares.
    private const double Rounding = 1e-8;

    [Property(MaxTest = 400)]
    public void Units_of_the_request_never_change_the_answer(uint number, int seed)
    {
        var check = CaseFiles.All[(int)(number % (uint)CaseFiles.All.Count)];
        var changed = InOtherUnits(JsonNode.Parse(check.Given.GetRawText())!, new Random(seed));
        var before = check.Calculation.Ask(check.Given);
        var after = check.Calculation.Ask(CaseFiles.Json(changed.ToJsonString()));
        Assert.Equal(before.Refusal?.Key, after.Refusal?.Key);
        Assert.True(after.Malformed is null, after.Malformed);
        Assert.Equal(before.Outputs!.Select(o => o.Key), after.Outputs!.Select(o => o.Key));
        foreach (var (name, value) in before.Outputs!)
            Same(name, value!, after.Outputs![name]!);
    }

    private static void Same(string name, JsonNode before, JsonNode after)
    {
        switch (before)
        {
            case JsonObject quantity when quantity.ContainsKey("unit"):
                var (a, b) = (InBase(before), InBase(after));
                Assert.True(Math.Abs(a - b) <= Rounding * (1 + Math.Abs(a)), $"{name}: {a} became {b}");
                break;
            case JsonObject o:
                Assert.Equal(o.Select(p => p.Key), after.AsObject().Select(p => p.Key));
                foreach (var (key, value) in o)
                    Same($"{name}.{key}", value!, after[key]!);
                break;
            case JsonArray list:
                Assert.Equal(list.Count, after.AsArray().Count);
                for (var i = 0; i < list.Count; i++)
                    Same($"{name}.{i}", list[i]!, after[i]!);
                break;
            default:
                Assert.True(JsonNode.DeepEquals(before, after), $"{name}: {before} became {after}");
                break;
        }
    }

    private static double InBase(JsonNode quantity) =>
        UnitTable.Named((string)quantity["unit"]!).ToBase((double)quantity["value"]!);

    private static JsonNode InOtherUnits(JsonNode node, Random random) =>
        node switch
        {
            JsonObject o => new JsonObject(
                o.Select(p => KeyValuePair.Create(p.Key, (JsonNode?)InOtherUnits(p.Value!, random)))
            ),
            JsonArray a => new JsonArray([.. a.Select(item => InOtherUnits(item!, random))]),
            JsonValue v when v.TryGetValue<string>(out var text) && Written.Read(text, out var written) is null =>
                JsonValue.Create(Another(written, random).ToString()),
            _ => node.DeepClone(),
        };

    private static Written Another(Written written, Random random)
    {
        var units = UnitTable.Measuring(written.Unit.Dimension).ToArray();
        return written.In(units[random.Next(units.Length)]);
    }
}
