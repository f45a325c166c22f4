namespace Witnessmark.Bench.Toml;

/// <summary>
/// A table whose keys are asked for one by one. What is missing or of another kind is noted as a mistake, and reading goes
/// on with an empty value, so that one run finds all mistakes; whoever reads must not use the result when there are any.
/// </summary>
public sealed partial record TomlTable(Place Place, Mistakes Mistakes) : TomlValue(Place)
{
    private readonly List<string> asked = [];

    /// <summary>A key's place and what stands behind it.</summary>
    public sealed record Entry(Place Key, TomlValue Value);

    /// <summary>In the order of the file.</summary>
    internal OrderedDictionary<string, Entry> Entries { get; } = new(StringComparer.Ordinal);

    /// <inheritdoc/>
    public override string InWords => "a table";

    /// <summary>The keys in the order of the file.</summary>
    public IEnumerable<string> Keys => Entries.Keys;

    /// <summary>Whether the key is there; asks for nothing.</summary>
    public bool Has(string key) => Entries.ContainsKey(key);

    /// <summary>Where the value of a key stands, or the table when the key is missing.</summary>
    public Place At(string key) => Entries.GetValueOrDefault(key)?.Value.Place ?? Place;

    /// <summary>Where a key itself stands, or the table when the key is missing.</summary>
    public Place KeyAt(string key) => Entries.GetValueOrDefault(key)?.Key ?? Place;

    /// <summary>Notes a mistake at the value of a key.</summary>
    public void Wrong(string key, string found, string right) => Mistakes.Add(At(key), found, right);

    /// <summary>Lets keys stand that somebody else looks at, or that say nothing once something before them is wrong.</summary>
    public void LetStand(params ReadOnlySpan<string> keys)
    {
        foreach (var key in keys)
            Ask(key);
    }

    /// <summary>Notes every key that nobody asked for. To be called last.</summary>
    public void NoOtherKeys()
    {
        foreach (var (key, entry) in Entries)
            if (!asked.Contains(key))
                Mistakes.Add(entry.Key, $"unknown key \"{key}\"", Nearest.InWords(key, asked));
    }

    /// <inheritdoc/>
    public bool Equals(TomlTable? other) => ReferenceEquals(this, other);

    /// <inheritdoc/>
    public override int GetHashCode() => System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(this);

    private TomlValue? Ask(string key)
    {
        if (!asked.Contains(key))
            asked.Add(key);
        return Entries.GetValueOrDefault(key)?.Value;
    }

    private T? Maybe<T>(string key, string right)
        where T : TomlValue
    {
        var value = Ask(key);
        if (value is not null and not T)
            Wrong(key, value.InWords, $"{key} = {right}");
        return value as T;
    }

    private T? Needed<T>(string key, string right)
        where T : TomlValue
    {
        if (!Has(key))
            Mistakes.Add(Place, $"\"{key}\" is missing", $"{key} = {right}");
        return Maybe<T>(key, right);
    }
}
