namespace Witnessmark.Paper.LogBook;

/// <summary>What can be found about a log book file.</summary>
public enum LogBookWord
{
    /// <summary>As it was written.</summary>
    Intact,

    /// <summary>Something in it was changed, put in or taken out.</summary>
    Changed,

    /// <summary>The end is missing, or entries that it counts.</summary>
    Truncated,

    /// <summary>Not a log book that this program can read.</summary>
    Unreadable,
}

/// <summary>What was found about a log book file.</summary>
/// <param name="Word">In one word.</param>
/// <param name="Says">In a sentence.</param>
/// <param name="Entry">Id of the entry that was changed, where it is one.</param>
/// <param name="Head">The file's seal, to be compared with the paper; null when it is not intact.</param>
public sealed record LogBookFinding(LogBookWord Word, string Says, string? Entry = null, string? Head = null);
