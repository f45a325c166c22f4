using Witnessmark.Bench.Record;
using Witnessmark.Client.Languages;

namespace Witnessmark.Client.Doors;

/// <summary>Words of the door: letting devices in, signing in, the book.</summary>
internal static class DoorWords
{
    public static string NoDoor => Say($"The shop's answer cannot be read.");
    public static string Title => Say($"The door");

    public static string Enrol => Say($"Let this device in");
    public static string EnrolWhy =>
        Say(
            $"This shop speaks only to devices that a lead let in. A lead finds the code under “The door”; it is good for 15 minutes."
        );
    public static string NoKey =>
        Say(
            $"This browser keeps no key at this address, so the device cannot be let in. Open the shop by its https address."
        );
    public static string Code => Say($"Code");
    public static string Label => Say($"What people call this device");
    public static string LabelHint => Say($"Tablet at lift 1");
    public static string Shared => Say($"Several people work with it: it asks again after 15 minutes without a deed");
    public static string Own => Say($"One person's own: it asks again after 8 hours without a deed");
    public static string LetIn => Say($"Let it in");

    public static string Who => Say($"Who are you?");
    public static string KeptHere =>
        Say($"What was written on this device is kept and goes to the shop once somebody signed in.");
    public static string NeedsShop => Say($"Signing in needs the shop");
    public static string NeedsShopWhy =>
        Say($"The shop does not answer, and no secret is kept on this device. Entries that were made here are kept.");
    public static string Digits => Say($"Your six digits");
    public static string Passphrase => Say($"Your passphrase");
    public static string SignIn => Say($"Sign in");
    public static string SignOut => Say($"Sign out");
    public static string Other => Say($"Somebody else");
    public static string Again => Say($"Ask the shop again");
    public static string Checking => Say($"The shop is asked");

    public static string First => Say($"First sign-in");
    public static string FirstWhy =>
        Say($"A lead gave you a start code. With it you choose a secret that only you know.");
    public static string HaveCode => Say($"I have a start code");
    public static string StartCode => Say($"Start code");
    public static string ChooseDigits => Say($"Six digits that only you know");
    public static string ChoosePassphrase => Say($"A passphrase of at least 15 characters that only you know");
    public static string Twice => Say($"The same once more");
    public static string NotSame => Say($"The two are not the same.");
    public static string Choose => Say($"Choose it and sign in");

    public static string Close => Say($"Close the door");
    public static string CloseShort => Say($"everybody signs in");
    public static string CloseWhy =>
        Say(
            $"Now whoever sits at this computer may do everything, and no other device gets in. With the door closed, devices are let in one by one, and everybody signs in: technicians with six digits, leads with a passphrase."
        );
    public static string CloseBack =>
        Say(
            $"It stays closed. Keep the passphrase safe: who may open a lost name again is another lead, or whoever may use the shop's computer."
        );
    public static string Lead => Say($"Which lead are you?");
    public static string NoLeads =>
        Say(
            $"shop.toml names no leads. Under [workshop], leads = [\"NAME\"] says who they are; start the server again after it."
        );

    public static string BookShort => Say($"who may come in");
    public static string People => Say($"People");
    public static string Devices => Say($"Devices");
    public static string Happened => Say($"What happened");
    public static string GiveCode => Say($"Give a start code");
    public static string ShutOut => Say($"Shut out");
    public static string Yes => Say($"Yes, shut it out");
    public static string NewDevice => Say($"Let another device in");
    public static string ThisDevice => Say($"this device");

    public static string OnlyLooks => Say($"Signed in to look: nothing can be written here.");

    public static string ConfirmDigits => Say($"Your six digits once more");
    public static string ConfirmPassphrase => Say($"Your passphrase once more");
    public static string ConfirmWhy => Say($"The release is bound to you: the shop checks once more who signs.");

    public static string WordWhy =>
        Say($"The shop checks whose word it is: only while it is in reach, and for this job on this device alone.");
    public static string WordNeedsShop =>
        Say(
            $"The shop does not answer, and it alone can tell whose word this is. Nothing was written; try again when it is in reach."
        );
    public static string NotCounting => Say($"Does not count");

    /// <summary>Why an entry that stands here says nothing.</summary>
    public static string NotCountingWhy(Entry entry, string kind) =>
        Say($"{kind}, by {entry.By}: nobody showed the shop whose word it is.");

    public static string ShowAgain => Say($"Go on");
    public static string ShowAgainWhy =>
        Say($"This needs your passphrase once more; then it is good for five minutes.");
    public static string OwnSecret => Say($"Change your secret");

    public static string OwnSecretShort(bool lead) => lead ? Say($"your passphrase") : Say($"your six digits");

    public static string OwnSecretWhy => Say($"Wherever else you are signed in, you are asked again.");
    public static string SecretNow => Say($"The one that you have");
    public static string Change => Say($"Change it");
    public static string Changed => Say($"It is changed.");

    public static string Typed(int digits) => Say($"{digits} of 6 digits typed");

    public static string CodeIs(string code) => Say($"Code: {code}");

    public static string CodeWhere =>
        Say($"Open the shop's address on the other device and type the code there. It is good for 15 minutes.");

    public static string CodeFor(string person) => Say($"Start code for {person}, good for 24 hours:");

    public static string Standing(BookPerson person) =>
        person.CodeUntil is not null ? Say($"has a start code")
        : person.Shut ? Say($"shut after wrong secrets")
        : person.Started ? Say($"has a secret")
        : Say($"needs a start code");

    public static string Standing(BookDevice device) =>
        device.Revoked is { } gone ? Say($"shut out {Day(gone)}")
        : device.Shared ? Say($"shared, let in {Day(device.At)} by {device.LetInBy}")
        : Say($"somebody's own, let in {Day(device.At)} by {device.LetInBy}");

    /// <summary>Where else one is signed in.</summary>
    public static string Elsewhere(ElsewhereReply other) =>
        Say($"You are signed in on {other.Label} since {At(other.Since)}");

    /// <summary>Who is signed in on it now; null: nobody.</summary>
    public static string? Here(BookDevice device) =>
        device is { Here: { } person, Since: { } since } ? Say($"{person} is signed in since {At(since)}") : null;

    public static string Role(string role) =>
        role switch
        {
            "lead" => Say($"lead"),
            "technician" => Say($"technician"),
            _ => Say($"reader"),
        };

    public static string At(DateTimeOffset at) =>
        $"{Spoken.Day(DateOnly.FromDateTime(at.LocalDateTime))} {at.LocalDateTime.ToString("HH:mm", CultureInfo.InvariantCulture)}";

    private static Sentence Day(DateTimeOffset at) =>
        Sentence.Day(DayForm.Figures, DateOnly.FromDateTime(at.LocalDateTime));
}
