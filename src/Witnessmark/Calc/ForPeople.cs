using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Witnessmark.Calc;

/// <summary>A reply as aligned lines: name, value, unit.</summary>
public static class ForPeople
{
    /// <summary>One line for each value, those inside lists and objects under their path.</summary>
    public static string Text(JsonObject reply)
    {
        var lines = Lines("", reply).ToArray();
        var width = lines.Select(l => l.Name.Length).DefaultIfEmpty(0).Max();
        return string.Concat(lines.Select(l => $"{l.Name.PadRight(width)}  {l.Value}\n"));
    }

    private static IEnumerable<(string Name, string Value)> Lines(string path, JsonNode? node) =>
        node switch
        {
            JsonObject o when o.Count == 2 && o["value"] is { } value && o["unit"] is { } unit =>
            [
                (path, (string)unit! == "1" ? Number(value) : $"{Number(value)} {unit}"),
            ],
            JsonObject o => o.SelectMany(p => Lines(path.Length == 0 ? p.Key : $"{path}.{p.Key}", p.Value)),
            JsonArray { Count: 0 } => [(path, "none")],
            JsonArray a when a.All(e => e is JsonValue) => [(path, string.Join(", ", a.Select(e => e!.ToString())))],
            JsonArray a => a.SelectMany((e, i) => Lines($"{path}.{i}", e)),
            JsonValue v when v.GetValueKind() == JsonValueKind.Number => [(path, Number(v))],
            _ => [(path, node?.ToString() ?? "")],
        };

    // Four figures are more than a bench reads; whole numbers stay whole.
    private static string Number(JsonNode node)
    {
        var value = node.GetValue<JsonElement>().GetDouble();
        if (value == Math.Round(value) && Math.Abs(value) < 1e9)
            return value.ToString("0", CultureInfo.InvariantCulture);
        var decimals = Math.Clamp(3 - (int)Math.Floor(Math.Log10(Math.Abs(value))), 0, 15);
        return Math.Abs(value) is < 1e-4 or >= 1e9
            ? value.ToString("G4", CultureInfo.InvariantCulture)
            : Math.Round(value, decimals).ToString(CultureInfo.InvariantCulture);
    }
}
