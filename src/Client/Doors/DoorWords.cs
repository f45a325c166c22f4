namespace Witnessmark.Client.Doors;

/// <summary>Words of the door: letting devices in, signing in, the book.</summary>
internal static class DoorWords
{
    public const string NoDoor = "The shop's answer cannot be read.";
    public const string Title = "The door";

    public const string Enrol = "Let this device in";
    public const string EnrolWhy =
        "This shop speaks only to devices that a lead let in. A lead finds the code under “The door”; it is good for 15 minutes.";
    public const string NoKey =
        "This browser keeps no key at this address, so the device cannot be let in. Open the shop by its https address.";
    public const string Code = "Code";
    public const string Label = "What people call this device";
    public const string LabelHint = "Tablet at lift 1";
    public const string Shared = "Several people work with it: it asks again after 15 minutes without a deed";
    public const string Own = "One person's own: it asks again after 8 hours without a deed";
    public const string LetIn = "Let it in";

    public const string Who = "Who are you?";
    public const string KeptHere =
        "What was written on this device is kept and goes to the shop once somebody signed in.";
    public const string NeedsShop = "Signing in needs the shop";
    public const string NeedsShopWhy =
        "The shop does not answer, and no secret is kept on this device. Entries that were made here are kept.";
    public const string Digits = "Your six digits";
    public const string Passphrase = "Your passphrase";
    public const string SignIn = "Sign in";
    public const string SignOut = "Sign out";
    public const string Other = "Somebody else";
    public const string Again = "Ask the shop again";
    public const string Checking = "The shop is asked";

    public const string First = "First sign-in";
    public const string FirstWhy = "A lead gave you a start code. With it you choose a secret that only you know.";
    public const string HaveCode = "I have a start code";
    public const string StartCode = "Start code";
    public const string ChooseDigits = "Six digits that only you know";
    public const string ChoosePassphrase = "A passphrase of at least 15 characters that only you know";
    public const string Twice = "The same once more";
    public const string NotSame = "The two are not the same.";
    public const string Choose = "Choose it and sign in";

    public const string Close = "Close the door";
    public const string CloseShort = "everybody signs in";
    public const string CloseWhy =
        "Now whoever sits at this computer may do everything, and no other device gets in. With the door closed, devices are let in one by one, and everybody signs in: technicians with six digits, leads with a passphrase.";
    public const string CloseBack =
        "It stays closed. Keep the passphrase safe: who may open a lost name again is another lead, or whoever may use the shop's computer.";
    public const string Lead = "Which lead are you?";
    public const string NoLeads =
        "shop.toml names no leads. Under [workshop], leads = [\"NAME\"] says who they are; start the server again after it.";

    public const string Book = "Who may come in, and what happened";
    public const string People = "People";
    public const string Devices = "Devices";
    public const string Happened = "What happened";
    public const string GiveCode = "Give a start code";
    public const string ShutOut = "Shut out";
    public const string Sure = "Shut out for good?";
    public const string Yes = "Yes, shut it out";
    public const string NewDevice = "Let another device in";
    public const string ThisDevice = "this device";
    public const string ForLeads = "Only a lead sees this.";

    public const string OnlyLooks = "Signed in to look: nothing can be written here.";

    public const string ConfirmDigits = "Your six digits once more";
    public const string ConfirmPassphrase = "Your passphrase once more";
    public const string ConfirmWhy = "The release is bound to you: the shop checks once more who signs.";

    public static string Typed(int digits) => $"{digits} of 6 digits typed";

    public static string CodeIs(string code) => $"Code: {code}";

    public static string CodeFor(string person) => $"Start code for {person}, good for 24 hours:";

    public static string Standing(BookPerson person) =>
        person.CodeUntil is not null ? "has a start code"
        : person.Shut ? "shut after wrong secrets"
        : person.Started ? "has a secret"
        : "needs a start code";

    public static string Standing(BookDevice device) =>
        device.Revoked is { } gone
            ? $"shut out {Day(gone)}"
            : $"{(device.Shared ? "shared" : "somebody's own")}, let in {Day(device.At)} by {device.LetInBy}";

    public static string Role(string role) =>
        role switch
        {
            "lead" => "lead",
            "technician" => "technician",
            _ => "reader",
        };

    public static string At(DateTimeOffset at) =>
        at.LocalDateTime.ToString("yyyy-MM-dd HH:mm", System.Globalization.CultureInfo.InvariantCulture);

    private static string Day(DateTimeOffset at) =>
        at.LocalDateTime.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
}
