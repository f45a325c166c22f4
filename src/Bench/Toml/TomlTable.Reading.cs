using System.Globalization;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Toml;

public sealed partial record TomlTable
{
    private const string SomeText = "text in quotes";

    /// <summary>Text that must be there and not be empty.</summary>
    public string Text(string key)
    {
        var text = Needed<TomlText>(key, SomeText);
        if (text is not null && string.IsNullOrWhiteSpace(text.Text))
            Wrong(key, "empty text", $"{key} = {SomeText}");
        return text?.Text ?? "";
    }

    /// <summary>Text, or null when the key is missing.</summary>
    public string? TextOrNothing(string key) => Has(key) ? Text(key) : AskedInVain(key);

    /// <summary>A whole number within bounds.</summary>
    public int Whole(string key, int min, int max)
    {
        var right = string.Create(CultureInfo.InvariantCulture, $"a whole number from {min} to {max}");
        var whole = Needed<TomlWhole>(key, right);
        if (whole is not null && (whole.Number < min || whole.Number > max))
            Wrong(key, whole.InWords, $"{key} = {right}");
        return whole is null ? min : (int)Math.Clamp(whole.Number, min, max);
    }

    /// <summary>A decimal number as it stands in the file, with or without quotes, or null when the key is missing.</summary>
    public string? DecimalOrNothing(string key, string right)
    {
        var value = Ask(key);
        if (value is TomlText { Text: var text })
            return text;
        if (value is TomlWhole { Number: var whole })
            return whole.ToString(CultureInfo.InvariantCulture);
        if (value is TomlFraction { Written: var written })
            return written;
        if (value is not null)
            Wrong(key, value.InWords, $"{key} = {right}");
        return null;
    }

    /// <summary>A whole number within bounds, or null when the key is missing.</summary>
    public int? WholeOrNothing(string key, int min, int max)
    {
        if (Has(key))
            return Whole(key, min, max);
        AskedInVain(key);
        return null;
    }

    /// <summary>true or false.</summary>
    public bool Truth(string key) => Needed<TomlTruth>(key, "true or false")?.True ?? false;

    /// <summary>true or false, or null when the key is missing.</summary>
    public bool? TruthOrNothing(string key) => Maybe<TomlTruth>(key, "true or false")?.True;

    /// <summary>A day, or null when the key is missing.</summary>
    public DateOnly? DayOrNothing(string key)
    {
        const string right = "a day such as 2026-03-31, without quotes";
        var date = Maybe<TomlDate>(key, right);
        if (date is null)
            return null;
        if (DateOnly.TryParseExact(date.Written, "yyyy-MM-dd", CultureInfo.InvariantCulture, default, out var day))
            return day;
        Wrong(key, date.InWords, $"{key} = {right}");
        return null;
    }

    /// <summary>A moment by the clock on the wall, or null when the key is missing.</summary>
    public DateTime? MomentOrNothing(string key)
    {
        const string right = "a moment such as 2026-03-31T16:00:00, without quotes and without a zone";
        var date = Maybe<TomlDate>(key, right);
        if (date is null)
            return null;
        if (Day.ShopTime.Read(date.Written) is { } moment)
            return moment;
        Wrong(key, date.InWords, $"{key} = {right}");
        return null;
    }

    /// <summary>Text or a list of text in which the same may stand twice, as readings do; empty when the key is missing.</summary>
    public IReadOnlyList<string> Repeats(string key)
    {
        const string right = "text such as \"50 mm\", or a list of it";
        if (Ask(key) is not { } value)
            return [];
        List<string> texts = [];
        foreach (var item in value is TomlList list ? list.Items : [value])
            if (item is TomlText { Text: var text } && !string.IsNullOrWhiteSpace(text))
                texts.Add(text);
            else
                Mistakes.Add(item.Place, item.InWords, $"{key} = {right}");
        return texts;
    }

    /// <summary>A list of text, empty when the key is missing.</summary>
    public IReadOnlyList<string> Texts(string key)
    {
        const string right = "a list such as [\"one\", \"two\"]";
        List<string> texts = [];
        foreach (var item in Maybe<TomlList>(key, right)?.Items ?? [])
            if (item is not TomlText { Text: var text } || string.IsNullOrWhiteSpace(text))
                Mistakes.Add(item.Place, item.InWords, $"{key} = {right}");
            else if (texts.Contains(text))
                Mistakes.Add(item.Place, $"\"{text}\" a second time", "each once");
            else
                texts.Add(text);
        return texts;
    }

    /// <summary>A list of text that must be there and not be empty.</summary>
    public IReadOnlyList<string> SomeTexts(string key)
    {
        var texts = Texts(key);
        if (!Has(key))
            Mistakes.Add(Place, $"\"{key}\" is missing", $"{key} = a list such as [\"one\", \"two\"]");
        else if (texts.Count == 0 && Entries[key].Value is TomlList { Items.Count: 0 })
            Wrong(key, "an empty list", "at least one");
        return texts;
    }

    /// <summary>Where one text of a list stands.</summary>
    public Place At(string key, string item) =>
        (Entries.GetValueOrDefault(key)?.Value as TomlList)
            ?.Items.FirstOrDefault(i => i is TomlText t && t.Text == item)
            ?.Place
        ?? At(key);

    /// <summary>A quantity of one dimension; null with a mistake noted when it is none. A pure number needs no unit.</summary>
    public Written? Quantity(string key, Dimension dimension)
    {
        var right =
            dimension == Dimension.Number
                ? "a number in quotes, e.g. \"0.5\" or \"4 %\""
                : $"text with a unit, e.g. \"1 {UnitTable.Measuring(dimension).First()}\"";
        if (Needed<TomlText>(key, right) is not { } text)
            return null;
        if (dimension == Dimension.Number && Written.Read(text.Text.Trim() + " 1", out var number) is null)
            return number;
        if (Written.Read(text.Text.Trim(), out var written) is { } why)
            Wrong(key, $"\"{text.Text}\": {why}", $"{key} = {right}");
        else if (written.Unit.Dimension != dimension)
            Wrong(key, $"\"{text.Text}\" has the wrong kind of unit", $"{key} = {right}");
        else
            return written;
        return null;
    }

    /// <summary>A quantity of one dimension, or null when the key is missing.</summary>
    public Written? QuantityOrNothing(string key, Dimension dimension)
    {
        if (Has(key))
            return Quantity(key, dimension);
        AskedInVain(key);
        return null;
    }

    /// <summary>One of some words, standing for a value.</summary>
    public T OneOf<T>(string key, IReadOnlyDictionary<string, T> words)
        where T : struct
    {
        if (Needed<TomlText>(key, OneOf("", [.. words.Keys])) is not { } text)
            return default;
        if (words.TryGetValue(text.Text, out var value))
            return value;
        Wrong(key, text.InWords, OneOf(text.Text, [.. words.Keys]));
        return default;
    }

    /// <summary>One of some words, or null when the key is missing or says another.</summary>
    public string? WordOrNothing(string key, IReadOnlyCollection<string> words)
    {
        var text = Maybe<TomlText>(key, OneOf("", words))?.Text;
        if (text is null || words.Contains(text))
            return text;
        Wrong(key, $"the text \"{text}\"", OneOf(text, words));
        return null;
    }

    /// <summary>One or more of some words; empty when the key is missing.</summary>
    public IReadOnlyList<string> Words(string key, IReadOnlyCollection<string> words)
    {
        var texts = Repeats(key);
        foreach (var text in texts.Where(t => !words.Contains(t)))
            Mistakes.Add(At(key, text), $"the text \"{text}\"", OneOf(text, words));
        if (Has(key) && texts.Count == 0 && Entries[key].Value is TomlList { Items.Count: 0 })
            Wrong(key, "an empty list", "at least one");
        return texts;
    }

    /// <summary>The items of a list whatever they are, empty when the key is missing.</summary>
    public IReadOnlyList<TomlValue> Items(string key, string right) => Maybe<TomlList>(key, right)?.Items ?? [];

    private static string OneOf(string text, IReadOnlyCollection<string> words) =>
        Nearest.To(text, words) is { } near
            ? $"\"{near}\""
            : "one of " + string.Join(", ", words.Select(w => $"\"{w}\""));

    /// <summary>A unit by its symbol, or null when the key is missing or says no unit.</summary>
    public Unit? UnitOrNothing(string key)
    {
        if (Maybe<TomlText>(key, "a unit such as \"mm\"") is not { } text)
            return null;
        if (UnitTable.Find(text.Text) is { } unit)
            return unit;
        Wrong(
            key,
            $"\"{text.Text}\" is not a unit",
            "one of " + string.Join(", ", UnitTable.All.Select(u => u.Symbol))
        );
        return null;
    }

    /// <summary>A table that must be there; an empty one with a mistake noted when it is not.</summary>
    public TomlTable Table(string key) => Needed<TomlTable>(key, $"a table [{key}]") ?? new(Place, new Mistakes());

    /// <summary>A table, or null when the key is missing.</summary>
    public TomlTable? TableOrNothing(string key) => Maybe<TomlTable>(key, $"a table [{key}]");

    /// <summary>The tables inside a table, by name, in the order of the file; none when the key is missing.</summary>
    public IEnumerable<(string Name, TomlTable Table)> Tables(string key)
    {
        var outer = TableOrNothing(key);
        foreach (var name in outer?.Keys ?? [])
            if (outer!.Maybe<TomlTable>(name, $"a table [{key}.{name}]") is { } table)
                yield return (name, table);
    }

    /// <summary>The tables under the same <c>[[key]]</c>; none when the key is missing.</summary>
    public IEnumerable<TomlTable> TableList(string key)
    {
        foreach (var item in Maybe<TomlList>(key, $"tables under [[{key}]]")?.Items ?? [])
            if (item is TomlTable table)
                yield return table;
            else
                Mistakes.Add(item.Place, item.InWords, $"tables under [[{key}]]");
    }

    private string? AskedInVain(string key)
    {
        Ask(key);
        return null;
    }
}
