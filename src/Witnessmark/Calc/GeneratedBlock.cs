namespace Witnessmark.Calc;

/// <summary>The part of a documentation page that comes from the code.</summary>
public static class GeneratedBlock
{
    /// <summary>The line before it.</summary>
    public const string Begin = "<!-- begin: written by `witnessmark calc describe NAME --page FILE`, do not edit -->";

    /// <summary>The line after it.</summary>
    public const string End = "<!-- end -->";

    /// <summary>What stands between the two lines, or null when they are not both there.</summary>
    public static string? In(string page) => Bounds(page) is { } b ? page[b.From..b.To] : null;

    /// <summary>The page with another block, or null when it has no place for one.</summary>
    public static string? Replaced(string page, string block) =>
        Bounds(page) is { } b ? page[..b.From] + block + page[b.To..] : null;

    private static (int From, int To)? Bounds(string page)
    {
        var begin = page.IndexOf(Begin + "\n", StringComparison.Ordinal);
        var from = begin + Begin.Length + 1;
        var to = begin < 0 ? -1 : page.IndexOf(End, from, StringComparison.Ordinal);
        return to < 0 ? null : (from, to);
    }
}
