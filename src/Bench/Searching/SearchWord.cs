using Witnessmark.Bench.Campaigns;

namespace Witnessmark.Bench.Searching;

/// <summary>Where a typed word stands in a text, the best first.</summary>
internal enum Standing
{
    /// <summary>A word begins with it.</summary>
    Beginning,

    /// <summary>It stands inside of a word.</summary>
    Inside,

    Nowhere,
}

/// <summary>One word that was typed; in either case.</summary>
internal sealed record SearchWord(string Text, string Key)
{
    /// <summary>The words of what was typed; signs alone are none.</summary>
    public static IReadOnlyList<SearchWord> Of(string typed) =>
        [
            .. typed
                .Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)
                .Select(w => new SearchWord(w, NameKey.Of(w)))
                .Where(w => w.Key.Length > 0),
        ];

    /// <summary>In a text as it stands.</summary>
    public Standing In(string text)
    {
        var best = Standing.Nowhere;
        for (var at = Next(text, 0); at >= 0; at = Next(text, at + 1))
        {
            if (at == 0 || !char.IsLetterOrDigit(text[at - 1]))
                return Standing.Beginning;
            best = Standing.Inside;
        }
        return best;
    }

    /// <summary>In a number, whose spaces and dashes are no matter.</summary>
    public Standing InNumber(string number)
    {
        var plain = In(number);
        if (plain == Standing.Beginning)
            return plain;
        return NameKey.Of(number).IndexOf(Key, StringComparison.Ordinal) switch
        {
            0 => Standing.Beginning,
            > 0 => Standing.Inside,
            _ => plain,
        };
    }

    private int Next(string text, int from) =>
        from < text.Length ? text.IndexOf(Text, from, StringComparison.OrdinalIgnoreCase) : -1;
}
