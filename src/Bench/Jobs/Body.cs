using System.Globalization;
using System.Text.Json;
using Witnessmark.Bench.Day;
using Witnessmark.Bench.Judging;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Jobs;

/// <summary>An entry's body says something that this program does not understand. It is kept all the same.</summary>
internal sealed class NotUnderstood(Sentence why) : Exception(why)
{
    public Sentence Why => why;
}

/// <summary>Reads the keys of a body; whatever is not of the expected form is not understood.</summary>
internal readonly struct Body(JsonElement element)
{
    public string Text(string name) => TextOrNone(name) ?? throw Missing(name, $"text");

    public string? TextOrNone(string name) =>
        Find(name) is not { } found ? null
        : found.ValueKind == JsonValueKind.String ? found.GetString()
        : throw Missing(name, $"text");

    public int Whole(string name) =>
        Find(name) is { ValueKind: JsonValueKind.Number } found && found.TryGetInt32(out var whole)
            ? whole
            : throw Missing(name, $"a whole number");

    public bool Truth(string name) =>
        Find(name)?.ValueKind switch
        {
            JsonValueKind.True => true,
            JsonValueKind.False => false,
            _ => throw Missing(name, $"true or false"),
        };

    public bool Has(string name) => Find(name) is not null;

    public IReadOnlyList<string> Texts(string name) =>
        Find(name) is { ValueKind: JsonValueKind.Array } found
        && found.EnumerateArray().All(e => e.ValueKind == JsonValueKind.String)
            ? [.. found.EnumerateArray().Select(e => e.GetString()!)]
            : throw Missing(name, $"a list of text");

    public IReadOnlyList<string> TextsOrNone(string name) => Find(name) is null ? [] : Texts(name);

    public Body Inside(string name) =>
        Find(name) is { ValueKind: JsonValueKind.Object } found ? new(found) : throw Missing(name, $"an object");

    /// <summary>All its keys, each with a text.</summary>
    public IReadOnlyDictionary<string, string> TextsByName()
    {
        var body = this;
        return element.EnumerateObject().ToDictionary(p => p.Name, p => body.Text(p.Name), StringComparer.Ordinal);
    }

    public IEnumerable<Body> Objects(string name) =>
        Find(name) is { ValueKind: JsonValueKind.Array } found
            ? [.. found.EnumerateArray().Select(e => new Body(e))]
            : throw Missing(name, $"a list");

    public DateTime Moment(string name) =>
        Text(name) is var text && ShopTime.Read(text) is { } moment
            ? moment
            : throw new NotUnderstood($"{new AsItStands(name)}: \"{text}\" is no moment such as 2026-11-27T16:00");

    public Body? ObjectOrNone(string name) =>
        Find(name) is not { } found ? null
        : found.ValueKind == JsonValueKind.Object ? new Body(found)
        : throw Missing(name, $"an object");

    /// <summary>Decimal text, as everything that was typed.</summary>
    public double? NumberOrNone(string name) =>
        TextOrNone(name) is not { } text ? null
        : double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number)
        && double.IsFinite(number)
            ? number
        : throw new NotUnderstood($"{new AsItStands(name)}: \"{text}\" is not a number");

    public double? LitresOrNone(string name) => QuantityOrNone(name, "L");

    public double? KilometresOrNone(string name) => QuantityOrNone(name, "km");

    private double? QuantityOrNone(string name, string unit) =>
        TextOrNone(name) is not { } text
            ? null
            : RawValue.In(text, UnitTable.Named(unit), out var why)
                ?? throw new NotUnderstood($"{new AsItStands(name)}: {why}");

    private JsonElement? Find(string name) =>
        element.ValueKind == JsonValueKind.Object && element.TryGetProperty(name, out var found) ? found : null;

    private static NotUnderstood Missing(string name, Sentence wanted) =>
        new($"{new AsItStands(name)}: {wanted} is missing");
}
