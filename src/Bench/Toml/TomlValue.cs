using System.Globalization;

namespace Witnessmark.Bench.Toml;

/// <summary>What stands behind a key, with its place.</summary>
public abstract record TomlValue(Place Place)
{
    /// <summary>In words, for a mistake: <c>the text "abc"</c>.</summary>
    public abstract string InWords { get; }
}

/// <summary>Text.</summary>
public sealed record TomlText(Place Place, string Text) : TomlValue(Place)
{
    /// <inheritdoc/>
    public override string InWords => $"the text \"{Text}\"";
}

/// <summary>A whole number.</summary>
public sealed record TomlWhole(Place Place, long Number) : TomlValue(Place)
{
    /// <inheritdoc/>
    public override string InWords => string.Create(CultureInfo.InvariantCulture, $"the number {Number}");
}

/// <summary>A number with a fraction.</summary>
public sealed record TomlFraction(Place Place, double Number) : TomlValue(Place)
{
    /// <summary>Its digits as they stand in the file: money is never read as floating point.</summary>
    public string Written { get; init; } = "";

    /// <inheritdoc/>
    public override string InWords => string.Create(CultureInfo.InvariantCulture, $"the number {Number}");
}

/// <summary>true or false.</summary>
public sealed record TomlTruth(Place Place, bool True) : TomlValue(Place)
{
    /// <inheritdoc/>
    public override string InWords => True ? "true" : "false";
}

/// <summary>A date or a time, as written.</summary>
public sealed record TomlDate(Place Place, string Written) : TomlValue(Place)
{
    /// <inheritdoc/>
    public override string InWords => $"the date or time {Written}";
}

/// <summary>A list of values, or of tables under the same <c>[[name]]</c>.</summary>
public sealed record TomlList(Place Place, IReadOnlyList<TomlValue> Items) : TomlValue(Place)
{
    /// <inheritdoc/>
    public override string InWords => "a list";
}
