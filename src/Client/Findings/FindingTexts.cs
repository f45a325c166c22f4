namespace Witnessmark.Client.Findings;

/// <summary>Words of the findings' page.</summary>
internal static class FindingTexts
{
    public const string Title = "Findings";
    public const string Add = "A finding";
    public const string None = "Nothing was written down that the owner has to hear of.";
    public const string What = "What was found";
    public const string WhatHint = "in a few words, as the owner understands them";
    public const string HowUrgent = "How urgent";
    public const string At = "Found at";
    public const string Keep = "Keep the finding";
    public const string Cancel = "Cancel";
    public const string Change = "Change the words";
    public const string MakeEstimate = "Make an estimate";
    public const string EstimateAgain = "Change the estimate";
    public const string Minutes = "Hands-on minutes";
    public const string Item = "Part";
    public const string Quantity = "How many";
    public const string Price = "Price of one, before tax";
    public const string AnotherPart = "Another part";
    public const string KeepEstimate = "Keep the estimate";
    public const string NoEstimate = "no estimate";
    public const string Decide = "The owner's word";
    public const string DecideAgain = "The owner's word once more";
    public const string Approve = "Have it done";
    public const string Decline = "Leave it";
    public const string Who = "Name of who decides";
    public const string How = "How it was said";
    public const string Acknowledge = "The owner has heard this and acknowledges it";
    public const string KeepDecision = "Keep the decision";
    public const string Sign = "Sign in the field";
    public const string SignAgain = "Once more";
    public const string PutRight = "It is put right";
    public const string HowPutRight = "How it was put right";
    public const string KeepPutRight = "Keep";
    public const string Disputed = "Two devices wrote different decisions. Ask the owner once more.";
    public const string Changed = "It was changed after the owner decided. Ask once more.";
    public const string Undecided = "Not decided yet.";
    public const string Sheet = "Estimate sheet (PDF)";

    public static string With(int photographs) =>
        photographs == 1
            ? "The photograph of this point goes with it."
            : $"The {photographs} photographs of this point go with it.";

    public static string Count(int count) => count == 1 ? "1 finding" : $"{count} findings";

    /// <summary>What is still lacking of a decision; empty when nothing is.</summary>
    public static string Missing(bool? approved, string name, bool means, bool signed, bool acknowledged) =>
        approved is null ? "Choose what the owner decided."
        : name.Trim().Length == 0 ? "Write the name."
        : !means ? "Choose how it was said."
        : !signed ? "The signature is missing."
        : !acknowledged ? "Read it to the owner and tick it, or keep the finding open."
        : "";
}
