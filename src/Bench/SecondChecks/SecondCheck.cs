using Witnessmark.Bench.Corrections;
using Witnessmark.Bench.Jobs;

namespace Witnessmark.Bench.SecondChecks;

/// <summary>How the second check of a point stands.</summary>
/// <param name="First">The first person's reading that counts, or last counted; null while there is none.</param>
/// <param name="Second">The second person's reading beside it, or null.</param>
/// <param name="Agreement">Whether the two agree; null while one is missing.</param>
public sealed record SecondCheck(ReadingTaken? First, ReadingTaken? Second, Agreement? Agreement)
{
    /// <summary>Whether the first person has done with it: it is marked and waits for the second one.</summary>
    public bool Awaited { get; init; }

    /// <summary>Whether it is being looked at by somebody who is to read it without seeing what was read.</summary>
    public bool Hidden { get; init; }

    /// <summary>What to do here as far as it can be said without any reading of the point.</summary>
    public Advice? Unread { get; init; }

    /// <summary>Whether it is done: somebody else has read the same.</summary>
    public bool Agrees => Agreement is { Agrees: true };

    /// <summary>Whether two people came to different readings, so that both look again.</summary>
    public bool Differs => Agreement is { Agrees: false };

    /// <summary>One person, however the name was written.</summary>
    public static bool IsSame(string? a, string? b) =>
        a is not null && b is not null && string.Equals(a.Trim(), b.Trim(), StringComparison.OrdinalIgnoreCase);
}
