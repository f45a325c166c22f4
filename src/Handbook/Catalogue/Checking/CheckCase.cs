using System.Text.Json;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>One request with what is expected of the reply.</summary>
/// <param name="Calculation">The calculation asked.</param>
/// <param name="Name">What the case is called.</param>
/// <param name="Source">Where the expected values are from.</param>
/// <param name="Given">The request.</param>
/// <param name="Expect">Expectations by path into the reply.</param>
public sealed record CheckCase(
    Calculation Calculation,
    string Name,
    string Source,
    JsonElement Given,
    IReadOnlyList<(string Path, JsonElement Value)> Expect
)
{
    /// <summary>Runs the case.</summary>
    /// <returns>What differs, a sentence each; empty when all is as expected.</returns>
    public IReadOnlyList<string> Differences()
    {
        var reply = Calculation.Ask(Given);
        if (reply.Malformed is { } wrong)
            return [$"the request is malformed: {wrong}"];
        using var json = JsonDocument.Parse(reply.ToJson().ToJsonString());
        var differences = new List<string>();
        if (reply.Refusal is { } refusal && Expect.All(e => e.Path != "refused"))
            differences.Add($"refused as {refusal.Key}, which is not expected: {refusal.Because}");
        foreach (var (path, value) in Expect)
            if (Expectation.Difference(Reached(json.RootElement, path), value) is { } difference)
                differences.Add($"{path} {difference}");
        return differences;
    }

    // A number in a path counts list entries from 0.
    private static JsonElement? Reached(JsonElement from, string path)
    {
        JsonElement? at = from;
        foreach (var step in path.Split('.'))
            at = at switch
            {
                { ValueKind: JsonValueKind.Object } o when o.TryGetProperty(step, out var inside) => inside,
                { ValueKind: JsonValueKind.Array } a
                    when int.TryParse(step, out var i) && i >= 0 && i < a.GetArrayLength() => a[i],
                _ => null,
            };
        return at;
    }
}
