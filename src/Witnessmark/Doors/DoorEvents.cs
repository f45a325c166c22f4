namespace Witnessmark.Doors;

/// <summary>Kinds of what the book of the door tells. They stand in kept files: never changed.</summary>
public static class DoorEvents
{
    public const string Closed = "door closed";
    public const string SignedIn = "signed in";
    public const string SignedOut = "signed out";
    public const string Refused = "refused";
    public const string Shut = "shut";
    public const string CodeGiven = "code given";
    public const string SecretChosen = "secret chosen";
    public const string DeviceIn = "device let in";
    public const string DeviceOut = "device shut out";
    public const string Confirmed = "confirmed";
    public const string Unconfirmed = "release not confirmed";
    public const string WordGiven = "word given";
    public const string WordMissing = "word missing";
    public const string Brought = "brought for others";
    public const string Exported = "exported";
    public const string Changed = "changed";
}
