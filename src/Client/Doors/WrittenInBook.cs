namespace Witnessmark.Client.Doors;

/// <summary>What happened at the door, for whoever reads it: the book holds it in English, each event bound to the one before.</summary>
internal static class WrittenInBook
{
    // stands for any argument
    private const string X = "";

    private static readonly Retold Events = new([.. People, .. Devices, .. Deeds]);

    /// <summary>An event in the person's language.</summary>
    public static string Of(string says) => Say(Events.Of(says));

    private static IEnumerable<Sentence> People =>
        [
            $"{X} closed the door.",
            $"{X} gave {X} a start code.",
            $"{X} came with a wrong start code.",
            $"{X} chose a secret.",
            $"{X} changed their secret.",
            $"{X} signed in.",
            $"{X} signed out.",
            $"{X} was signed out after the time that the device allows.",
            $"A wrong secret for {X}, {X} in a row.",
            $"The door was shut to {X} after {X} wrong secrets.",
        ];

    private static IEnumerable<Sentence> Devices =>
        [
            $"{X} gave a code that lets a device in.",
            $"The device \"{X}\" was let in.",
            $"A device \"{X}\" came with a wrong code.",
            $"A device that was shut out came again.",
            $"{X} shut out the device \"{X}\".",
        ];

    private static IEnumerable<Sentence> Deeds =>
        [
            $"{X} confirmed the release of {X}.",
            $"A release of {X} by {X} came without a confirmation of the shop. It does not count on paper.",
            $"{X} gave their word in {X}: {X} is dropped.",
            $"{X} gave their word in {X} for the figure {X} at {X}.",
            $"{X} gave their word in {X}: it leaves with the campaign {X} open.",
            $"An entry of {X} by {X} ({X}) counts by the word of {X} and came without it. It does not count.",
            $"{X} asked for what is for a {X}.",
            $"{X} took {X}: {X}.",
            $"{X} took away who brings the machine {X}.",
            $"{X} set {X} of the sheet {X}: revision {X}.",
            $"While {X} was signed in, the device brought entries of {X}: {X}.",
        ];
}
