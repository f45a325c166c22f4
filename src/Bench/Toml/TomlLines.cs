using System.Globalization;
using System.Text;

namespace Witnessmark.Bench.Toml;

/// <summary>Writes a TOML file line by line. Every text is quoted, so that none becomes a key, a table or a value of another kind.</summary>
internal sealed class TomlLines
{
    private readonly StringBuilder written = new();

    public static string Digits(int number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary>All of it.</summary>
    public override string ToString() => written.ToString();

    /// <summary>Begins a table.</summary>
    public TomlLines Table(string name, string? inner = null)
    {
        if (written.Length > 0)
            written.Append('\n');
        written.Append(inner is null ? $"[{name}]\n" : $"[{name}.{TomlQuote.Of(inner)}]\n");
        return this;
    }

    /// <summary>Text; null is left out.</summary>
    public TomlLines Text(string key, string? text) => text is null ? this : Line(key, TomlQuote.Of(text));

    /// <summary>A list of texts.</summary>
    public TomlLines Texts(string key, IEnumerable<string> texts) =>
        Line(key, $"[{string.Join(", ", texts.Select(TomlQuote.Of))}]");

    /// <summary>A whole number; null is left out.</summary>
    public TomlLines Whole(string key, int? number) => number is { } known ? Line(key, Digits(known)) : this;

    /// <summary>A day as typed; what is none is written as text, which whoever reads it will say.</summary>
    public TomlLines Day(string key, string? day) =>
        DateOnly.TryParseExact(day, "yyyy-MM-dd", CultureInfo.InvariantCulture, default, out _)
            ? Line(key, day!)
            : Text(key, day);

    /// <summary>true or false as that, any other word as text.</summary>
    public TomlLines Word(string key, string word) =>
        word is "true" or "false" ? Line(TomlQuote.Of(key), word) : Text(TomlQuote.Of(key), word);

    private TomlLines Line(string key, string value)
    {
        written.Append(key).Append(" = ").Append(value).Append('\n');
        return this;
    }
}
