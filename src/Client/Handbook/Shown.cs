using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Witnessmark.Client.Handbook;

/// <summary>Outputs of a calculation as people read them.</summary>
internal static class Shown
{
    private const string Significant = "G6"; // more would be read as precision that nobody has

    /// <summary>A value in lines: one, or one for each element of a list of objects.</summary>
    public static IReadOnlyList<string> Lines(JsonNode? node) =>
        node is JsonArray list && list.Any(e => e is JsonObject inside && !IsQuantity(inside))
            ? [.. list.Select(e => Text(e))]
            : [Text(node)];

    private static string Text(JsonNode? node) =>
        node switch
        {
            null => "–",
            JsonObject quantity when IsQuantity(quantity) => Quantity(quantity),
            JsonObject inside => string.Join(
                ", ",
                inside.Select(p => $"{HandbookWords.Spoken(p.Key)} {Text(p.Value)}")
            ),
            JsonArray list => string.Join(", ", list.Select(Text)),
            JsonValue value when value.GetValueKind() is JsonValueKind.True => HandbookWords.Yes,
            JsonValue value when value.GetValueKind() is JsonValueKind.False => HandbookWords.No,
            JsonValue value when value.GetValueKind() is JsonValueKind.String => value.GetValue<string>(),
            _ => Said(node.ToJsonString()),
        };

    // the page of a calculation is in English
    private static string Said(string number) => Tongue.English.Number(number);

    private static bool IsQuantity(JsonObject json) =>
        json.Count == 2 && json.ContainsKey("value") && json.ContainsKey("unit");

    private static string Quantity(JsonObject json)
    {
        var unit = json["unit"]!.GetValue<string>();
        var number = json["value"]!.GetValue<double>().ToString(Significant, CultureInfo.InvariantCulture);
        return Said(unit == "1" ? number : $"{number} {unit}");
    }
}
