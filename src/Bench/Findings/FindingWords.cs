namespace Witnessmark.Bench.Findings;

/// <summary>Findings in sentences, the same on the screen and on paper.</summary>
public static class FindingWords
{
    /// <summary>Why an approved finding's point is in the plan.</summary>
    public static Sentence Why(Finding finding) => $"A finding, approved by the owner: {Ended(finding.What)}";

    /// <summary>What keeps the machine because of a finding, or null when nothing does.</summary>
    /// <param name="finding">The finding.</param>
    /// <param name="pointHolds">Whether its point is in the plan and holds the machine by itself.</param>
    public static Sentence? Hold(Finding finding, bool pointHolds) =>
        finding.Urgency != Urgency.BeforeRiding ? null
        : finding.Disputed
            ? (Sentence)
                $"{Title(finding)}two devices wrote different decisions at the same time. Ask the owner once more."
        : finding is { Decision: null, LastWord: not null }
            ? (Sentence)$"{Title(finding)}it was changed after the owner decided. Ask once more."
        : finding.Decision is not { } decision
            ? (Sentence)$"{Title(finding)}to be put right before riding; the owner has not decided yet."
        : decision is { Approved: false, Acknowledged: false }
            ? (Sentence)$"{Title(finding)}the owner wants it left, and has not acknowledged what that means."
        : decision.Approved && !finding.IsPutRight && !pointHolds
            ? (Sentence)$"{Title(finding)}approved, not put right yet."
        : null;

    /// <summary>What declining means; the owner acknowledges these words.</summary>
    public static Sentence Meaning(Finding finding) =>
        finding.Urgency switch
        {
            Urgency.BeforeRiding =>
                $"Riding the machine as it is can injure or kill. The workshop advises against riding it until this has been put right.",
            Urgency.ByNextService => $"It can get worse and spoil more. Have it put right by the next service.",
            _ => $"Look at it now and then; have it looked at when it changes.",
        };

    /// <summary>
    /// The owner's word in a sentence for paper: <c>The owner was told that … and decided not to have it done …</c>; null while nobody
    /// decided.
    /// </summary>
    public static Sentence? Decided(Finding finding) =>
        finding.Decision is not { } decision ? null
        : decision.Approved ? (Sentence)$"Approved by {By(decision)}."
        : finding.Urgency == Urgency.BeforeRiding
            ? (Sentence)
                $"The owner was told that this has to be put right before riding, and decided not to have it done ({By(decision)}). {Meaning(finding)} {Acknowledged(decision)}"
        : (Sentence)$"The owner was told, and decided not to have it done ({By(decision)}). {Meaning(finding)}";

    /// <summary>What came of it, for paper; null when there is nothing to say.</summary>
    public static Sentence? Outcome(Finding finding) =>
        finding.PutRight is var (entry, how) ? (Sentence)$"Put right: {Ended(how)} ({entry.By})"
        : finding is { Marked: { } mark, Decision.Approved: true }
            ? (Sentence)$"Put right; its point was marked by {mark.By}."
        : finding.Decision is { Approved: true } ? (Sentence)$"Not put right in this visit yet."
        : null;

    private static Sentence Acknowledged(Decision decision) =>
        decision.Acknowledged
            ? (Sentence)$"{decision.Name} has acknowledged this."
            : (Sentence)$"This has not been acknowledged.";

    private static Sentence By(Decision decision) => $"{decision.Name}, {decision.Means.InWords()}";

    /// <summary>What was found, as the beginning of a sentence: <c>Rear pads worn: </c>.</summary>
    public static Sentence Title(Finding finding) => $"{finding.What.TrimEnd('.', ' ')}: ";

    private static Sentence Ended(string text) => Sentence.Of(text).Ended();
}
