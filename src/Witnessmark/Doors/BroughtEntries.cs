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
    /// <summary>
    /// Before they are taken in, releases that nobody confirmed and what counts by the word of somebody who did not give it: a stop in between must not make
    /// them count.
    /// </summary>
    /// <remarks>What the ledger has already is not looked at again: nobody makes a good entry count for nothing by sending another under its name.</remarks>
    public static void Flag(IReadOnlyList<JsonElement> entries, SignedIn who, Door door, ShopLedger ledger)
    {
        foreach (var entry in entries)
            if (RawText.In(entry, "id") is { } id && Missing(entry, id, who, door, ledger) is var (what, says))
                door.Unconfirmed(id, what, who, says);
    }

    /// <summary>Entries of others than who is signed in.</summary>
    public static void Note(IReadOnlyList<JsonElement> entries, SignedIn who, Door door)
    {
        foreach (var others in entries.Select(e => RawText.In(e, "by")).OfType<string>().CountBy(by => by))
            if (others.Key != who.Person)
                door.Note(DoorEvents.Brought, who, BookLine.Brought(who.Person, others.Key, others.Value));
    }

    private static (string What, BookLine Says)? Missing(
        JsonElement entry,
        string id,
        SignedIn who,
        Door door,
        ShopLedger ledger
    )
    {
        var (kind, job, by) = (RawText.In(entry, "kind"), RawText.In(entry, "job"), RawText.In(entry, "by"));
        if (kind == EntryKind.Release)
            return ledger.Has(id) || IsConfirmed(entry, id, who, door)
                ? null
                : (DoorEvents.Unconfirmed, BookLine.Unconfirmed(job, by));
        return WordOf(entry, kind, by) is not { } word || ledger.Has(id) || IsGiven(entry, id, word, who, door)
            ? null
            : (DoorEvents.WordMissing, BookLine.WordMissing(word, job, by));
    }

    private static Word? WordOf(JsonElement entry, string? kind, string? by) =>
        kind is not null && entry.TryGetProperty("body", out var body) ? Word.Of(kind, by ?? "", body) : null;

    private static bool IsGiven(JsonElement entry, string id, Word word, SignedIn who, Door door) =>
        door.IsGiven(
            RawText.In(entry.GetProperty("body"), Word.Key),
            id,
            word,
            who.Device,
            RawText.In(entry, "job") ?? ""
        );

    private static bool IsConfirmed(JsonElement release, string id, SignedIn who, Door door) =>
        RawText.In(release, "by") is { } by
        && release.TryGetProperty("body", out var body)
        && RawText.In(body, "name") == by
        && door.IsConfirmed(RawText.In(body, Word.Key), id, by, who.Device, RawText.In(release, "job") ?? "");
}
