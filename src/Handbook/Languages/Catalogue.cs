namespace Witnessmark.Handbook.Languages;

/// <summary>The texts of a language by their English keys.</summary>
public sealed class Catalogue
{
    private readonly Dictionary<(string Key, string? Context), string> texts = [];
    private readonly Dictionary<(string One, string Many), IReadOnlyList<string>> plurals = [];

    /// <summary>A catalogue of these entries; one without a text is left out.</summary>
    /// <param name="entries">The entries.</param>
    public Catalogue(IEnumerable<PoEntry> entries)
    {
        foreach (var entry in entries.Where(e => e.Texts.All(t => t.Length > 0)))
        {
            if (entry.Many is { } many)
                plurals[(entry.Key, many)] = entry.Texts;
            else
                texts[(entry.Key, entry.Context)] = entry.Texts[0];
        }
    }

    /// <summary>No text at all.</summary>
    public static Catalogue None { get; } = new([]);

    /// <summary>The text for a key with that context; else for the key alone.</summary>
    internal string? Text(string key, string? context) =>
        texts.TryGetValue((key, context), out var text) ? text
        : context is not null ? Text(key, null)
        : null;

    /// <summary>The forms for one and many.</summary>
    internal IReadOnlyList<string>? Plural(string one, string many) => plurals.GetValueOrDefault((one, many));
}
