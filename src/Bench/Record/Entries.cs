using System.Text.Json;

namespace Witnessmark.Bench.Record;

/// <summary>A new fact before it has its number: all that the person and the device say.</summary>
/// <param name="Id">Unique, made by the device.</param>
/// <param name="Shop">The workshop.</param>
/// <param name="Job">The job it belongs to.</param>
/// <param name="Kind">One of <see cref="EntryKind"/>.</param>
/// <param name="Body">From <see cref="EntryBody"/>.</param>
/// <param name="Strikes">Id of the entry that it takes back, or null.</param>
/// <param name="Covers">What else the writer had seen of this job: highest seq by <c>device/epoch</c>; null when nothing.</param>
/// <param name="At">The device's clock, ISO 8601.</param>
/// <param name="By">The person.</param>
public sealed record EntryDraft(
    string Id,
    string Shop,
    string Job,
    string Kind,
    JsonElement Body,
    string? Strikes,
    IReadOnlyDictionary<string, int>? Covers,
    string At,
    string By
);

/// <summary>Makes entries of drafts.</summary>
public static class Entries
{
    /// <summary>The fact with its number in the device's chain and its hash.</summary>
    /// <param name="draft">The fact.</param>
    /// <param name="device">The device that writes it.</param>
    /// <param name="epoch">From 1; counts up when the device's storage was wiped.</param>
    /// <param name="seq">From 1, one more than the entry before.</param>
    /// <param name="devicePrevious">Hash of the entry before; null for the first and only for the first.</param>
    /// <exception cref="ArgumentException">Number and previous hash do not fit each other.</exception>
    public static Entry Sealed(EntryDraft draft, string device, int epoch, int seq, string? devicePrevious)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(epoch, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(seq, 1);
        if (seq == 1 != devicePrevious is null)
            throw new ArgumentException($"Entry {seq} of a chain with previous hash \"{devicePrevious}\".");
        var entry = Unsealed(draft, device, epoch, seq, devicePrevious);
        return entry with { Hash = EntryHash.Of(entry) };
    }

    private static Entry Unsealed(EntryDraft draft, string device, int epoch, int seq, string? devicePrevious) =>
        new(
            draft.Id,
            draft.Shop,
            draft.Job,
            device,
            epoch,
            seq,
            draft.Kind,
            draft.Body,
            draft.Strikes,
            draft.Covers,
            draft.At,
            draft.By,
            devicePrevious,
            Hash: ""
        );
}
