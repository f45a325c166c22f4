using Witnessmark.Bench.Record;

namespace Witnessmark.Doors;

/// <summary>
/// What the book of the door can tell. It is kept in English, each event bound to the one before; the client knows every one of these sentences again
/// and says it to whoever reads, so there is no other way to write one.
/// </summary>
public sealed class BookLine
{
    private readonly Sentence says;

    private BookLine(Sentence says) => this.says = says;

    /// <summary>As the book keeps it.</summary>
    public override string ToString() => says.ToString();

    public static BookLine Closed(string lead) => new($"{lead} closed the door.");

    public static BookLine StartCode(string lead, string person) => new($"{lead} gave {person} a start code.");

    public static BookLine WrongStartCode(string person) => new($"{person} came with a wrong start code.");

    public static BookLine SecretChosen(string person) => new($"{person} chose a secret.");

    public static BookLine SecretChanged(string person) => new($"{person} changed their secret.");

    public static BookLine SignedIn(string person) => new($"{person} signed in.");

    public static BookLine SignedOut(string person) => new($"{person} signed out.");

    public static BookLine TimeOver(string person) =>
        new($"{person} was signed out after the time that the device allows.");

    public static BookLine WrongSecret(string person, int inARow) =>
        new($"A wrong secret for {person}, {inARow} in a row.");

    public static BookLine Shut(string person, int wrong) =>
        new($"The door was shut to {person} after {wrong} wrong secrets.");

    public static BookLine DeviceCode(string lead) => new($"{lead} gave a code that lets a device in.");

    public static BookLine DeviceIn(string label) => new($"The device \"{label}\" was let in.");

    public static BookLine WrongDeviceCode(string label) => new($"A device \"{label}\" came with a wrong code.");

    public static BookLine ShutDeviceCame() => new($"A device that was shut out came again.");

    public static BookLine DeviceOut(string lead, string label) => new($"{lead} shut out the device \"{label}\".");

    public static BookLine Confirmed(string person, string job) => new($"{person} confirmed the release of {job}.");

    public static BookLine Unconfirmed(string? job, string? by) =>
        new($"A release of {job} by {by} came without a confirmation of the shop. It does not count on paper.");

    public static BookLine WordGiven(Word word, string job) =>
        word switch
        {
            { Kind: EntryKind.Dropped, About: [var point] } => new(
                $"{word.Name} gave their word in {job}: {point} is dropped."
            ),
            { Kind: EntryKind.Vouch, About: [var point, var figure] } => new(
                $"{word.Name} gave their word in {job} for the figure {figure} at {point}."
            ),
            { Kind: EntryKind.CampaignLeft, About: [var number] } => new(
                $"{word.Name} gave their word in {job}: it leaves with the campaign {number} open."
            ),
            _ => throw new ArgumentOutOfRangeException(nameof(word), word, null),
        };

    public static BookLine WordMissing(Word word, string? job, string? by) =>
        new(
            $"An entry of {job} by {by} ({word.Kind}) counts by the word of {word.Name} and came without it. It does not count."
        );

    public static BookLine NotForThem(string person, string role) => new($"{person} asked for what is for a {role}.");

    public static BookLine Took(string person, string what, string from) => new($"{person} took {what}: {from}.");

    public static BookLine OwnerForgotten(string lead, string machine) =>
        new($"{lead} took away who brings the machine {machine}.");

    public static BookLine FigureSet(string lead, string figure, string sheet, int revision) =>
        new($"{lead} set {figure} of the sheet {sheet}: revision {revision}.");

    public static BookLine Brought(string person, string others, int entries) =>
        new($"While {person} was signed in, the device brought entries of {others}: {entries}.");
}
