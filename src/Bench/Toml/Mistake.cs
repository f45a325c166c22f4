using System.Collections;

namespace Witnessmark.Bench.Toml;

/// <summary>Something in a file that cannot be taken.</summary>
/// <param name="File">The file's name.</param>
/// <param name="Line">From 1.</param>
/// <param name="Column">From 1.</param>
/// <param name="Found">What stands there.</param>
/// <param name="Right">What would be right.</param>
public sealed record Mistake(string File, int Line, int Column, string Found, string Right)
{
    /// <summary>In one line: <c>book/controls.toml:7:9: there is no unit "mn"; right would be …</c></summary>
    public override string ToString() => $"{File}:{Line}:{Column}: {Found}; right would be {Right}";
}

/// <summary>All mistakes of one run, in the order they were met.</summary>
public sealed class Mistakes : IReadOnlyList<Mistake>
{
    private readonly List<Mistake> all = [];

    /// <inheritdoc/>
    public int Count => all.Count;

    /// <inheritdoc/>
    public Mistake this[int index] => all[index];

    /// <summary>Notes one more; the same said twice (a key that is asked for twice) counts once.</summary>
    public void Add(Place at, string found, string right)
    {
        var mistake = new Mistake(at.File, at.Line, at.Column, found, right);
        if (!all.Contains(mistake))
            all.Add(mistake);
    }

    /// <summary>By file, line and column: how a person works through them.</summary>
    public IReadOnlyList<Mistake> Sorted() =>
        [.. all.OrderBy(m => m.File, StringComparer.Ordinal).ThenBy(m => m.Line).ThenBy(m => m.Column)];

    /// <inheritdoc/>
    public IEnumerator<Mistake> GetEnumerator() => all.GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
