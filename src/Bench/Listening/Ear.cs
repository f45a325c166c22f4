using Witnessmark.Handbook.Sound;

namespace Witnessmark.Bench.Listening;

/// <summary>What is kept of a sound that passes: a plucked belt is silent again before anybody has read its pitch.</summary>
/// <remarks>A pitch is kept when two looks one after the other agree on it: a knock or a word that happened to be even is not heard twice.</remarks>
/// <param name="Last">The pitch of the last look, or null when it had none.</param>
/// <param name="Kept">The pitch that two looks agreed on last, or null.</param>
public sealed record Ear(Heard? Last, Heard? Kept)
{
    /// <summary>Two looks agree when their pitches are no further apart than this share, own.</summary>
    private const double Same = 0.005;

    /// <summary>Nothing heard yet.</summary>
    public static Ear Fresh { get; } = new(null, null);

    /// <summary>After one more look.</summary>
    public Ear After(Listened look)
    {
        if (!look.Pitch.Holds)
            return this with { Last = null };
        var heard = look.Pitch.Certain;
        return new(heard, Last is { } last && Agree(last, heard) ? Better(Kept, heard) : Kept);
    }

    // of the same pluck the look that knew it best; another pitch replaces it
    private static Heard Better(Heard? kept, Heard heard) =>
        kept is not null && Agree(kept, heard) && kept.Uncertainty < heard.Uncertainty ? kept : heard;

    private static bool Agree(Heard a, Heard b) => Math.Abs(a.Frequency / b.Frequency - 1) <= Same;
}
