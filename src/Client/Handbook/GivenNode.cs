using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using Witnessmark.Handbook.Catalogue;

namespace Witnessmark.Client.Handbook;

/// <summary>One key of a request while it is being filled in: a text, an object with keys of its own, or a list.</summary>
public sealed class GivenNode(Input input)
{
    private readonly List<GivenNode> items = [];

    /// <summary>What it is.</summary>
    public Input Input => input;

    /// <summary>As typed; empty where nothing stands.</summary>
    public string Text { get; set; } = "";

    /// <summary>The keys of an object.</summary>
    public IReadOnlyList<GivenNode> Fields { get; } =
        input.Shape == InputShape.Object ? [.. input.Fields.Select(f => new GivenNode(f))] : [];

    /// <summary>The elements of a list.</summary>
    public IReadOnlyList<GivenNode> Items => items;

    public void Add() => items.Add(new(input.Element!));

    public void Remove(GivenNode item) => items.Remove(item);

    /// <summary>Fills it from an example.</summary>
    public void Fill(JsonElement value)
    {
        if (input.Shape is not (InputShape.Object or InputShape.List))
            Text = value.ValueKind == JsonValueKind.String ? value.GetString()! : value.GetRawText();
        foreach (var field in Fields)
            if (value.ValueKind == JsonValueKind.Object && value.TryGetProperty(field.Input.Name, out var inside))
                field.Fill(inside);
        items.Clear();
        if (input.Shape == InputShape.List && value.ValueKind == JsonValueKind.Array)
            foreach (var element in value.EnumerateArray())
            {
                Add();
                items[^1].Fill(element);
            }
    }

    /// <summary>As it goes into the calculation; null when nothing was filled in. What is no number stays text, and the calculation says so.</summary>
    public JsonNode? Json() =>
        input.Shape switch
        {
            InputShape.Object => Blank ? null : Of(Fields),
            // a list that has to be there may have to be there empty
            InputShape.List => items.Count == 0 && input.Optional
                ? null
                : new JsonArray([.. items.Select(i => i.Json())]),
            _ when Text.Trim().Length == 0 => null,
            InputShape.Truth when Text is "true" or "false" => JsonValue.Create(Text == "true"),
            InputShape.Names => Names(Text),
            InputShape.Number when Number(Text) is { } number => JsonValue.Create(number),
            _ => JsonValue.Create(Text.Trim()),
        };

    // nothing was typed here or anywhere inside
    private bool Blank => Text.Trim().Length == 0 && items.Count == 0 && Fields.All(f => f.Blank);

    /// <summary>The object of some keys.</summary>
    public static JsonObject Of(IEnumerable<GivenNode> nodes)
    {
        var json = new JsonObject();
        foreach (var node in nodes)
            if (node.Json() is { } value)
                json.Add(node.Input.Name, value);
        return json;
    }

    // what is no JSON stays text, and the calculation says what is allowed
    private static JsonNode? Names(string text)
    {
        try
        {
            return JsonNode.Parse(text);
        }
        catch (JsonException)
        {
            return JsonValue.Create(text.Trim());
        }
    }

    // point and comma both work
    private static double? Number(string text) =>
        double.TryParse(text.Trim().Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out var number)
        && double.IsFinite(number)
            ? number
            : null;
}
