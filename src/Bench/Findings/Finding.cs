using Witnessmark.Bench.Photographs;
using Witnessmark.Bench.Record;

namespace Witnessmark.Bench.Findings;

/// <summary>Something to tell the owner: what, how urgent, what it costs, what was decided.</summary>
/// <param name="Id">Its name in the job.</param>
/// <param name="Entry">Who wrote it down as it stands, and when.</param>
/// <param name="Since">The entry from which on it says what it says: what was done before that cannot have put it right.</param>
/// <param name="Point">The point it was found at; empty for none.</param>
/// <param name="What">In the technician's words.</param>
/// <param name="Urgency">How soon it has to be put right.</param>
/// <param name="Photographs">What shows it, in order.</param>
/// <param name="Estimate">What putting it right is expected to cost, or null.</param>
/// <param name="Decision">The owner's word on it as it stands, or null.</param>
public sealed record Finding(
    string Id,
    Entry Entry,
    Entry Since,
    string Point,
    string What,
    Urgency Urgency,
    IReadOnlyList<Photograph> Photographs,
    Estimate? Estimate,
    Decision? Decision
)
{
    /// <summary>The owner's last word, also where it no longer covers what the finding says now; null: there was none.</summary>
    public Decision? LastWord { get; init; }

    /// <summary>Two devices wrote different decisions, neither knowing of the other: none counts.</summary>
    public bool Disputed { get; init; }

    /// <summary>How it was put right, in somebody's words, or null.</summary>
    public (Entry Entry, string How)? PutRight { get; init; }

    /// <summary>The mark at its point that was made after it was found, or null.</summary>
    public Entry? Marked { get; init; }

    /// <summary>What the owner is told now.</summary>
    public Told Told => new(What, Urgency, Estimate?.Total.ToString());

    /// <summary>Whether it was put right: by a mark at its point, or by somebody's word.</summary>
    public bool IsPutRight => PutRight is not null || Marked is not null;

    /// <summary>Whether the owner's no means that the machine leaves unsafe.</summary>
    public bool DeclinedBeforeRiding => this is { Urgency: Urgency.BeforeRiding, Decision.Approved: false };
}
