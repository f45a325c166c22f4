namespace Witnessmark.Bench.Toml;

/// <summary>The name that somebody probably meant.</summary>
public static class Nearest
{
    /// <summary>The known name with the fewest changes of a letter (Levenshtein), or null when none is near.</summary>
    public static string? To(string written, IEnumerable<string> known)
    {
        var best = known
            .Select(k => (Name: k, Steps: Steps(written, k)))
            .OrderBy(k => k.Steps)
            .ThenBy(k => k.Name, StringComparer.Ordinal)
            .FirstOrDefault();
        return best.Name is not null && best.Steps <= Bound(written) ? best.Name : null;
    }

    /// <summary>Two letters that changed places are two steps; in a very short name two steps make another name.</summary>
    private static int Bound(string written) => written.Length < 4 ? 1 : Math.Max(2, written.Length / 3);

    /// <summary>What would be right, in words: the near one, or all when they are few.</summary>
    public static string InWords(string written, IReadOnlyCollection<string> known) =>
        To(written, known) is { } near ? $"\"{near}\""
        : known.Count == 0 ? "none here"
        : "one of " + string.Join(", ", known.Order(StringComparer.Ordinal));

    private static int Steps(string a, string b)
    {
        var row = Enumerable.Range(0, b.Length + 1).ToArray();
        for (var i = 1; i <= a.Length; i++)
        {
            var diagonal = row[0];
            row[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var changed = diagonal + (a[i - 1] == b[j - 1] ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.Min(changed, Math.Min(row[j], row[j - 1]) + 1);
            }
        }
        return row[b.Length];
    }
}
