using System.Text.Json;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The keys of one JSON object, checked against the inputs that are allowed there.</summary>
public sealed class Given
{
    private readonly string path;
    private readonly IReadOnlyList<Input> inputs;

    // What stands at each input, undefined where nothing does: looked up once, not at every question.
    private readonly JsonElement[] values;

    /// <summary>Checks that there is an object, no unknown or doubled key, and none missing.</summary>
    /// <exception cref="MalformedGiven">Otherwise.</exception>
    public Given(JsonElement element, string path, IReadOnlyList<Input> inputs)
    {
        if (element.ValueKind != JsonValueKind.Object)
            throw new MalformedGiven(path, Found(element), "an object with the keys " + Names(inputs));
        values = new JsonElement[inputs.Count];
        foreach (var property in element.EnumerateObject())
        {
            var index = IndexOf(inputs, property);
            if (index < 0)
                throw new MalformedGiven(At(path, property.Name), "unknown key", Names(inputs));
            if (values[index].ValueKind != JsonValueKind.Undefined)
                throw new MalformedGiven(At(path, property.Name), "given twice", "each key once");
            values[index] = property.Value;
        }
        for (var i = 0; i < inputs.Count; i++)
            if (!inputs[i].Optional && values[i].ValueKind == JsonValueKind.Undefined)
                throw new MalformedGiven(At(path, inputs[i].Name), "missing", inputs[i].Kind);
        this.path = path;
        this.inputs = inputs;
    }

    /// <summary>Whether the key is there.</summary>
    public bool Has(Input input) => At(input).ValueKind != JsonValueKind.Undefined;

    /// <summary>What stands at the key, or its default.</summary>
    public T Of<T>(Input<T> input) =>
        At(input) is { ValueKind: not JsonValueKind.Undefined } value
            ? input.Read(value, At(path, input.Name))
            : input.Missing();

    /// <summary>What stands at the key, or null when it is left out.</summary>
    public T? Maybe<T>(Input<T> input)
        where T : struct => Has(input) ? Of(input) : null;

    /// <summary>A complaint about one key, for rules that reach over several.</summary>
    public MalformedGiven Wrong(string name, string found, string allowed) => new(At(path, name), found, allowed);

    private JsonElement At(Input input)
    {
        for (var i = 0; i < inputs.Count; i++)
            if (inputs[i].Name == input.Name)
                return values[i];
        return default;
    }

    private static int IndexOf(IReadOnlyList<Input> inputs, JsonProperty property)
    {
        for (var i = 0; i < inputs.Count; i++)
            if (property.NameEquals(inputs[i].Name))
                return i;
        return -1;
    }

    internal static string At(string path, string name) => path.Length == 0 ? name : $"{path}.{name}";

    internal static string Found(JsonElement element)
    {
        var raw = element.GetRawText();
        return raw.Length <= 40 ? raw : raw[..40] + "…";
    }

    private static string Names(IEnumerable<Input> inputs) => string.Join(", ", inputs.Select(i => i.Name));
}
