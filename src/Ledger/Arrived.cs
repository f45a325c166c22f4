using System.Runtime.InteropServices;
using System.Text;
using System.Text.Json;
using System.Text.Unicode;
using Witnessmark.Bench.Record;

namespace Witnessmark.Ledger;

/// <summary>Something that came: the entry when it is one, else why it is none.</summary>
/// <param name="Text">As it came.</param>
/// <param name="Entry">The entry; null when it is damaged.</param>
/// <param name="Damage">What is wrong, or null.</param>
/// <param name="Id">As far as it can be read, and so the next three.</param>
/// <param name="Device">The sender when it does not say.</param>
/// <param name="Epoch">The sender's when it does not say.</param>
/// <param name="Seq">Its number.</param>
/// <param name="Hash">The hash that it claims.</param>
internal sealed record Arrived(
    string Text,
    Entry? Entry,
    string? Damage,
    string? Id,
    string Device,
    int Epoch,
    int? Seq,
    string? Hash
)
{
    /// <summary>What the text is known by.</summary>
    public string TextHash => field ??= EntryHash.OfText(Text);

    /// <summary>The entry as a row, without what the shop adds; null when it is damaged.</summary>
    public KeptEntry? Row { get; } = Entry is null ? null : KeptEntry.Of(Entry);

    /// <summary>Reads what came from a device.</summary>
    public static Arrived Read(JsonElement json, string device, int epoch)
    {
        try
        {
            var entry = EntryJson.Read(json);
            return Unkept(entry) is { } why ? Damaged(json, why, device, epoch) : Whole(json, entry);
        }
        catch (MalformedEntry reason)
        {
            return Damaged(json, reason.Message, device, epoch);
        }
    }

    /// <summary>The same, but nothing that could be taken in where it belongs to a shop that was put away.</summary>
    public Arrived UnlessOf(IReadOnlyList<string> putAway) =>
        Entry is { } entry && putAway.Contains(entry.Shop)
            ? this with
            {
                Entry = null,
                Damage = $"It is of the workshop \"{entry.Shop}\", which was put away here.",
            }
            : this;

    /// <summary>Reads what was set aside.</summary>
    public static Arrived Again(SetAside aside)
    {
        using var document = JsonDocument.Parse(aside.Text);
        return Read(document.RootElement, aside.Device, aside.Epoch);
    }

    private static Arrived Whole(JsonElement json, Entry entry)
    {
        var right = EntryHash.Of(entry);
        var damage = right == entry.Hash ? null : $"Its content has the hash {right}, not {entry.Hash} as it says.";
        return new(
            AsItCame(json),
            damage is null ? entry : null,
            damage,
            entry.Id,
            entry.Device,
            entry.Epoch,
            entry.Seq,
            entry.Hash
        );
    }

    private static Arrived Damaged(JsonElement json, string damage, string device, int epoch) =>
        new(
            AsItCame(json),
            null,
            damage.Replace('\0', '\uFFFD'),
            RawText.In(json, "id"),
            RawText.In(json, "device") ?? device,
            Count(json, "epoch") ?? epoch,
            Count(json, "seq"),
            RawText.In(json, "hash")
        );

    // what it says about the job has it escaped, and may have it
    private static string? Unkept(Entry e) =>
        new[] { e.Id, e.Shop, e.Job, e.Device, e.Kind, e.Strikes, e.At, e.By, e.DevicePrevious, e.Hash }.Any(t =>
            t?.Contains('\0') == true
        )
            ? "One of its texts holds the sign U+0000, which not every store can keep."
        : new[] { e.Id, e.Shop, e.Job, e.Device, e.Strikes }.Any(t => t?.Any(char.IsControl) == true)
            ? "A name in it (its own, that of the shop, the job, the device, or of what it strikes) holds a control character."
        : null;

    /// <summary>As it came; what is not UTF-8, and so no text, as its bytes.</summary>
    private static string AsItCame(JsonElement json)
    {
        var bytes = JsonMarshal.GetRawUtf8Value(json);
        return Utf8.IsValid(bytes)
            ? Encoding.UTF8.GetString(bytes)
            : $"bytes in base64: {Convert.ToBase64String(bytes)}";
    }

    private static int? Count(JsonElement json, string name) =>
        json.ValueKind == JsonValueKind.Object
        && json.TryGetProperty(name, out var value)
        && value.ValueKind == JsonValueKind.Number
        && value.TryGetInt32(out var count)
        && count >= 1
            ? count
            : null;
}
