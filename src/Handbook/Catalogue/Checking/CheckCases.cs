using System.Text.Json;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>Reads check cases: one group or a list of groups, each naming a calculation, a source and its cases.</summary>
public static class CheckCases
{
    /// <summary>All cases of a file.</summary>
    /// <exception cref="MalformedCases">The file is not of that form, or names a calculation that does not exist.</exception>
    public static IReadOnlyList<CheckCase> In(JsonElement file) =>
        file.ValueKind == JsonValueKind.Array
            ? [.. file.EnumerateArray().SelectMany((group, i) => Group(group, $"group {i}"))]
            : [.. Group(file, "the group")];

    private static IEnumerable<CheckCase> Group(JsonElement group, string where)
    {
        var keys = Keys(group, where, ["calculation", "source", "cases"]);
        var name = Text(keys["calculation"], $"{where}: calculation");
        var calculation =
            Calculations.Named(name) ?? throw new MalformedCases($"{where}: there is no calculation \"{name}\".");
        var source = Text(keys["source"], $"{where}: source");
        if (keys["cases"].ValueKind != JsonValueKind.Array)
            throw new MalformedCases($"{where}: cases is not a list.");
        return keys["cases"].EnumerateArray().Select((c, i) => Case(calculation, source, c, $"{where}, case {i}"));
    }

    private static CheckCase Case(Calculation calculation, string source, JsonElement element, string where)
    {
        var keys = Keys(element, where, ["name", "given", "expect"]);
        if (keys["expect"].ValueKind != JsonValueKind.Object)
            throw new MalformedCases($"{where}: expect is not an object.");
        var expect = keys["expect"].EnumerateObject().Select(p => (p.Name, p.Value)).ToArray();
        if (expect.Length == 0)
            throw new MalformedCases($"{where}: expect is empty, so nothing would be checked.");
        foreach (var (path, value) in expect)
            if (Expectation.Malformed(value) is { } why)
                throw new MalformedCases($"{where}, {path}: {why}.");
        return new(calculation, Text(keys["name"], $"{where}: name"), source, keys["given"], expect);
    }

    private static Dictionary<string, JsonElement> Keys(JsonElement element, string where, string[] names)
    {
        if (element.ValueKind != JsonValueKind.Object)
            throw new MalformedCases($"{where} is not an object with the keys {string.Join(", ", names)}.");
        var found = new Dictionary<string, JsonElement>(StringComparer.Ordinal);
        foreach (var property in element.EnumerateObject())
        {
            if (!names.Contains(property.Name))
                throw new MalformedCases($"{where}: unknown key \"{property.Name}\".");
            if (!found.TryAdd(property.Name, property.Value))
                throw new MalformedCases($"{where}: \"{property.Name}\" is given twice.");
        }
        return names.FirstOrDefault(n => !found.ContainsKey(n)) is { } missing
            ? throw new MalformedCases($"{where}: \"{missing}\" is missing.")
            : found;
    }

    private static string Text(JsonElement element, string where) =>
        element.ValueKind == JsonValueKind.String
            ? element.GetString()!
            : throw new MalformedCases($"{where} is not text.");
}

/// <summary>A check file cannot be understood: where, and why.</summary>
public sealed class MalformedCases(string message) : Exception(message);
