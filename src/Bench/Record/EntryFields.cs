using System.Text.Json;

namespace Witnessmark.Bench.Record;

/// <summary>The fields of a JSON object that should be an entry; each is taken with its demand.</summary>
internal sealed class EntryFields
{
    private const int LongestText = 200;
    private readonly Dictionary<string, JsonElement> _fields = new(StringComparer.Ordinal);

    public EntryFields(JsonElement json, IReadOnlySet<string> known)
    {
        if (json.ValueKind != JsonValueKind.Object)
            throw new MalformedEntry($"An entry is an object, not {json.ValueKind}.");
        foreach (var member in json.EnumerateObject())
        {
            var name = Unicode("a field's name", () => member.Name);
            if (!known.Contains(name))
                throw new MalformedEntry($"\"{name}\" is no field of an entry.");
            if (!_fields.TryAdd(name, member.Value))
                throw new MalformedEntry($"\"{name}\" stands twice.");
        }
    }

    /// <summary>Text of 1 to 200 characters.</summary>
    public string Text(string name)
    {
        var text = AnyText(name);
        return text.Length is > 0 and <= LongestText
            ? text
            : throw new MalformedEntry($"\"{name}\" has {text.Length} characters; 1 to {LongestText} are allowed.");
    }

    /// <summary>Text of any length.</summary>
    public string AnyText(string name)
    {
        var value = Value(name);
        if (value.ValueKind != JsonValueKind.String)
            throw new MalformedEntry($"\"{name}\" is {value.ValueKind}, not text.");
        return Unicode($"\"{name}\"", () => value.GetString()!);
    }

    public string? TextOrNull(string name) => _fields.ContainsKey(name) ? Text(name) : null;

    /// <summary>An integer of 1 or more.</summary>
    public int Count(string name) => Count(name, Value(name));

    /// <summary>An object with a canonical text. It is copied, so that it outlives the document it came from.</summary>
    public JsonElement Object(string name)
    {
        var value = Value(name);
        if (value.ValueKind != JsonValueKind.Object)
            throw new MalformedEntry($"\"{name}\" is {value.ValueKind}, not an object.");
        try
        {
            CanonicalJson.Of(value);
        }
        catch (FormatException reason)
        {
            throw new MalformedEntry($"\"{name}\": {reason.Message}");
        }
        return value.Clone();
    }

    public IReadOnlyDictionary<string, int>? CountsOrNull(string name)
    {
        if (!_fields.ContainsKey(name))
            return null;
        var counts = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var member in Object(name).EnumerateObject())
            counts.Add(member.Name, Count($"{name}.{member.Name}", member.Value));
        return counts;
    }

    private static int Count(string name, JsonElement value) =>
        value.ValueKind == JsonValueKind.Number && value.TryGetInt32(out var count) && count >= 1
            ? count
            : throw new MalformedEntry($"\"{name}\" is {value.GetRawText()}; a whole number from 1 is allowed.");

    private JsonElement Value(string name) =>
        _fields.TryGetValue(name, out var value) ? value : throw new MalformedEntry($"\"{name}\" is missing.");

    private static string Unicode(string what, Func<string> text)
    {
        try
        {
            return text();
        }
        catch (InvalidOperationException)
        {
            throw new MalformedEntry($"{what} holds half a surrogate pair and is not Unicode.");
        }
    }
}
