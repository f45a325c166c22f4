namespace Witnessmark.Paper.LogBook;

/// <summary>What can be found about a log book file.</summary>
public enum LogBookWord
{
    /// <summary>As it was written; every signature in it is by a known key, or nobody signed it.</summary>
    Intact,

    /// <summary>Whole in itself, but signed by a key that is not known here.</summary>
    UnknownKey,

    /// <summary>Something in it was changed, put in or taken out.</summary>
    Changed,

    /// <summary>The end is missing, or entries or visits that it counts.</summary>
    Truncated,

    /// <summary>Not a log book that this program can read.</summary>
    Unreadable,
}

/// <summary>One visit in a log book.</summary>
/// <param name="Job">The job's number.</param>
/// <param name="Workshop">The workshop's name.</param>
/// <param name="Head">Its seal.</param>
/// <param name="KeyId">Id of the key that signed it; null when nobody did.</param>
/// <param name="KeyName">The name that the key is known by; null when it is not known.</param>
public sealed record VisitFinding(string? Job, string? Workshop, string Head, string? KeyId, string? KeyName);

/// <summary>What was found about a log book file.</summary>
/// <param name="Word">In one word.</param>
/// <param name="Says">In a sentence.</param>
/// <param name="Entry">Id of the entry that was changed, where it is one.</param>
/// <param name="Head">The last visit's seal, to be compared with the paper; null when the file is not whole.</param>
/// <param name="Visits">The visits in it, oldest first; none when it is not whole.</param>
public sealed record LogBookFinding(
    LogBookWord Word,
    string Says,
    string? Entry = null,
    string? Head = null,
    IReadOnlyList<VisitFinding>? Visits = null
);
