using Witnessmark.Bench.Record;

namespace Witnessmark.Bench.Findings;

/// <summary>By what means the owner's word came.</summary>
public enum Means
{
    /// <summary>Signed with the finger on the screen.</summary>
    Signature,

    /// <summary>Said here.</summary>
    InPerson,

    /// <summary>Said on the telephone.</summary>
    Telephone,

    /// <summary>Written in a message.</summary>
    Message,
}

/// <summary>The means in words, the same in files, on the screen and on paper.</summary>
public static class MeansWords
{
    /// <summary>Each by its words.</summary>
    public static IReadOnlyDictionary<string, Means> ByWords { get; } =
        new Dictionary<string, Means>(StringComparer.Ordinal)
        {
            ["signature"] = Means.Signature,
            ["in person"] = Means.InPerson,
            ["telephone"] = Means.Telephone,
            ["message"] = Means.Message,
        };

    /// <summary>As a part of a sentence: <c>by telephone</c>.</summary>
    public static Sentence InWords(this Means means) =>
        means switch
        {
            Means.Signature => $"by signature on the screen",
            Means.InPerson => $"in person",
            Means.Telephone => $"by telephone",
            _ => $"by message",
        };
}

/// <summary>What the owner was told and decided on: a decision covers this and nothing else.</summary>
/// <param name="What">The finding in its words.</param>
/// <param name="Urgency">How urgent it was said to be.</param>
/// <param name="Total">The estimate's total as it was told: <c>123.45 EUR</c>; null when there was no estimate.</param>
public sealed record Told(string What, Urgency Urgency, string? Total);

/// <summary>The owner's word on a finding.</summary>
/// <param name="Entry">Who wrote it down, and when.</param>
/// <param name="Told">What it covers.</param>
/// <param name="Approved">Have it done; else declined.</param>
/// <param name="Name">Whose word it is.</param>
/// <param name="Means">By what means it came.</param>
/// <param name="Acknowledged">Declined, and the owner has said that they know what it means.</param>
/// <param name="Signature">The signature, or null when there is none.</param>
public sealed record Decision(
    Entry Entry,
    Told Told,
    bool Approved,
    string Name,
    Means Means,
    bool Acknowledged,
    SignaturePath? Signature
);
