using System.Text.Json;
using Witnessmark.Bench.Record;
using Witnessmark.Ledger;

namespace Witnessmark.Doors;

/// <summary>
/// What the book of the door says of entries that come in. None is refused for it: whoever wrote without network may be gone
/// when somebody else signs in and the device brings them.
/// </summary>
internal static class BroughtEntries
{
    /// <summary>Before they are taken in, releases that nobody confirmed: a stop in between must not make them count.</summary>
    /// <remarks>What the ledger has already is not looked at again: nobody takes a good release off paper by sending another under its name.</remarks>
    public static void Flag(IReadOnlyList<JsonElement> entries, SignedIn who, Door door, ShopLedger ledger)
    {
        foreach (var release in entries.Where(e => Text(e, "kind") == EntryKind.Release))
            if (Text(release, "id") is { } id && !ledger.Has(id) && !IsConfirmed(release, id, who, door))
                door.Unconfirmed(id, who, BookLine.Unconfirmed(Text(release, "job"), Text(release, "by")));
    }

    /// <summary>Entries of others than who is signed in.</summary>
    public static void Note(IReadOnlyList<JsonElement> entries, SignedIn who, Door door)
    {
        foreach (var others in entries.Select(e => Text(e, "by")).OfType<string>().CountBy(by => by))
            if (others.Key != who.Person)
                door.Note(DoorEvents.Brought, who, BookLine.Brought(who.Person, others.Key, others.Value));
    }

    private static bool IsConfirmed(JsonElement release, string id, SignedIn who, Door door) =>
        Text(release, "by") is { } by
        && release.TryGetProperty("body", out var body)
        && Text(body, "name") == by
        && door.IsConfirmed(Text(body, "confirmed"), id, by, who.Device, Text(release, "job") ?? "");

    private static string? Text(JsonElement json, string name)
    {
        if (
            json.ValueKind != JsonValueKind.Object
            || !json.TryGetProperty(name, out var value)
            || value.ValueKind != JsonValueKind.String
        )
            return null;
        try
        {
            return value.GetString() is { } text && !text.Contains('\0') ? text : null; // the entry is set aside for it
        }
        catch (InvalidOperationException)
        {
            return null; // half a surrogate pair: the entry is set aside for it
        }
    }
}
