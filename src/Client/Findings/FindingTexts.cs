namespace Witnessmark.Client.Findings;

/// <summary>Words of the findings' page.</summary>
internal static class FindingTexts
{
    public static string Title => Say($"Findings");
    public static string Add => Say($"A finding");
    public static string Another => Say($"Another finding");
    public static string None => Say($"Nothing was written down that the owner has to hear of.");
    public static string What => Say($"What was found");
    public static string WhatHint => Say($"in a few words, as the owner understands them");
    public static string HowUrgent => Say($"How urgent");
    public static string At => Say($"Found at");
    public static string Keep => Say($"Keep the finding");
    public static string Cancel => Say($"Cancel");
    public static string Change => Say($"Change the words");
    public static string MakeEstimate => Say($"Make an estimate");
    public static string EstimateAgain => Say($"Change the estimate");
    public static string Minutes => Say($"Hands-on minutes");
    public static string Item => Say($"Part");
    public static string Quantity => Say($"How many");
    public static string Price => Say($"Price of one, before tax");
    public static string AnotherPart => Say($"Another part");
    public static string KeepEstimate => Say($"Keep the estimate");
    public static string NoEstimate => Say($"no estimate");
    public static string Decide => Say($"The owner's word");
    public static string DecideAgain => Say($"The owner's word once more");
    public static string Approve => Say($"Have it done");
    public static string Decline => Say($"Leave it");
    public static string Who => Say($"Name of who decides");
    public static string How => Say($"How it was said");
    public static string Acknowledge => Say($"The owner has heard this and acknowledges it");
    public static string KeepDecision => Say($"Keep the decision");
    public static string Sign => Say($"Sign in the field");
    public static string SignAgain => Say($"Once more");
    public static string PutRight => Say($"It is put right");
    public static string HowPutRight => Say($"How it was put right");
    public static string KeepPutRight => Say($"Keep");
    public static string Disputed => Say($"Two devices wrote different decisions. Ask the owner once more.");
    public static string Changed => Say($"It was changed after the owner decided. Ask once more.");
    public static string Undecided => Say($"Not decided yet.");
    public static string Sheet => Say($"Estimate sheet (PDF)");

    public static string With(int photographs) =>
        Say(
            Sentence.Count(
                photographs,
                $"The photograph of this point goes with it.",
                $"The {photographs} photographs of this point go with it."
            )
        );

    public static string Count(int count) => Say(Sentence.Count(count, $"1 finding", $"{count} findings"));

    /// <summary>What is still lacking of a decision; empty when nothing is.</summary>
    public static string Missing(bool? approved, string name, bool means, bool signed, bool acknowledged) =>
        approved is null ? Say($"Choose what the owner decided.")
        : name.Trim().Length == 0 ? Say($"Write the name.")
        : !means ? Say($"Choose how it was said.")
        : !signed ? Say($"The signature is missing.")
        : !acknowledged ? Say($"Read it to the owner and tick it, or keep the finding open.")
        : "";
}
