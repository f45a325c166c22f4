using System.Text.Json;
using System.Text.Json.Nodes;
using Witnessmark.Handbook.Catalogue;

namespace Witnessmark.Calc;

/// <summary>A request written as options: <c>--front-teeth 15 --limit.min 20mm --trials 'turns=0,slack=50mm'</c>.</summary>
public static class Options
{
    /// <summary>Makes the request.</summary>
    /// <param name="takes">What the calculation takes.</param>
    /// <param name="arguments">Options, each with its value; a truth may stand alone.</param>
    /// <exception cref="MalformedOption">An option is unknown, doubled or has no value.</exception>
    public static JsonObject Request(IReadOnlyList<Input> takes, IReadOnlyList<string> arguments)
    {
        var request = new JsonObject();
        for (var i = 0; i < arguments.Count; i++)
        {
            if (!arguments[i].StartsWith("--", StringComparison.Ordinal))
                throw new MalformedOption(
                    $"{arguments[i]}: an option begins with --, and a value with blanks needs quotes."
                );
            var option = arguments[i];
            var equals = option.IndexOf('=');
            var name = equals < 0 ? option[2..] : option[2..equals];
            string? value = equals < 0 ? null : option[(equals + 1)..];
            if (
                value is null
                && i + 1 < arguments.Count
                && !arguments[i + 1].StartsWith("--", StringComparison.Ordinal)
            )
                value = arguments[++i];
            Put(request, takes, name, name, value);
        }
        return request;
    }

    private static void Put(JsonObject into, IReadOnlyList<Input> inputs, string path, string whole, string? value)
    {
        var dot = path.IndexOf('.');
        var input = Named(inputs, dot < 0 ? path : path[..dot], whole);
        if (dot >= 0 && input.Fields.Count > 0 && input.Shape != InputShape.List)
        {
            if (into[input.Name] is not JsonObject inner)
                into[input.Name] = inner = [];
            Put(inner, input.Fields, path[(dot + 1)..], whole, value);
            return;
        }
        if (dot >= 0)
            throw new MalformedOption(
                $"--{whole}: nothing lies inside {Kebab(input.Name)} that has a name of its own."
            );
        if (value is null && input.Shape != InputShape.Truth)
            throw new MalformedOption($"--{whole}: the value is missing; allowed: {input.Kind}.");
        var node = Value(input, value ?? "true", whole);
        if (input.Shape != InputShape.List)
        {
            if (!into.TryAdd(input.Name, node))
                throw new MalformedOption($"--{whole}: given twice.");
            return;
        }
        if (into[input.Name] is not JsonArray list)
            into[input.Name] = list = [];
        list.Add(node);
    }

    // What the text is, the shape of the input says; what does not fit goes on as text, and the calculation tells what is allowed.
    private static JsonNode Value(Input input, string text, string whole)
    {
        if (input.Fields.Count > 0)
        {
            var inside = new JsonObject();
            foreach (var part in text.Split(',', StringSplitOptions.TrimEntries))
            {
                var equals = part.IndexOf('=');
                if (equals < 0)
                    throw new MalformedOption($"--{whole}: \"{part}\" is not of the form name=value.");
                Put(
                    inside,
                    input.Fields,
                    part[..equals].Trim(),
                    $"{whole}, {part[..equals].Trim()}",
                    part[(equals + 1)..].Trim()
                );
            }
            return inside;
        }
        var shape = (input.Element ?? input).Shape;
        return shape == InputShape.Number && Json(text, JsonValueKind.Number) is { } number ? number
            : shape == InputShape.Names && Json(text, JsonValueKind.Object) is { } names ? names
            : shape == InputShape.Truth && Json(text, JsonValueKind.True, JsonValueKind.False) is { } truth ? truth
            : JsonValue.Create(text);
    }

    private static JsonNode? Json(string text, params JsonValueKind[] kinds)
    {
        try
        {
            return JsonNode.Parse(text) is { } node && kinds.Contains(node.GetValueKind()) ? node : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    private static Input Named(IReadOnlyList<Input> inputs, string name, string whole) =>
        inputs.FirstOrDefault(i => i.Name == name || Kebab(i.Name) == name)
        ?? throw new MalformedOption(
            $"--{whole}: there is no option \"{name}\"; nearest: "
                + string.Join(", ", inputs.Select(i => Kebab(i.Name)).OrderBy(n => Distance(n, name)).Take(3))
                + "."
        );

    /// <summary>The name of an input as an option: <c>frontTeeth</c> is <c>front-teeth</c>.</summary>
    public static string Kebab(string name) =>
        string.Concat(name.Select(c => char.IsAsciiLetterUpper(c) ? $"-{char.ToLowerInvariant(c)}" : c.ToString()));

    // Fewest letters to change, add or take away (Levenshtein).
    private static int Distance(string a, string b)
    {
        var row = Enumerable.Range(0, b.Length + 1).ToArray();
        for (var i = 1; i <= a.Length; i++)
        {
            var corner = row[0];
            row[0] = i;
            for (var j = 1; j <= b.Length; j++)
                (corner, row[j]) = (
                    row[j],
                    Math.Min(Math.Min(row[j], row[j - 1]) + 1, corner + (a[i - 1] == b[j - 1] ? 0 : 1))
                );
        }
        return row[^1];
    }
}

/// <summary>What is wrong with an option.</summary>
public sealed class MalformedOption(string message) : Exception(message);
