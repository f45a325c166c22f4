using System.Text.Json;
using Witnessmark.Bench.Record;

namespace Witnessmark.Ledger;

/// <summary>An entry as a row: what the device wrote, and what the shop added.</summary>
public sealed class KeptEntry
{
    /// <summary>The shop's order: gapless from 1 over all devices.</summary>
    public long Order { get; set; }
    public required string Id { get; set; }
    public required string Shop { get; set; }
    public required string Job { get; set; }
    public required string Device { get; set; }
    public int Epoch { get; set; }
    public int Seq { get; set; }
    public required string Kind { get; set; }

    /// <summary>Canonical JSON.</summary>
    public required string Body { get; set; }
    public string? Strikes { get; set; }

    /// <summary>Canonical JSON, or null.</summary>
    public string? Covers { get; set; }
    public required string At { get; set; }
    public required string By { get; set; }
    public string? DevicePrevious { get; set; }
    public required string Hash { get; set; }

    /// <summary>The shop's chain over the entries of this job; see <see cref="JobChain"/>.</summary>
    public required string JobHash { get; set; }

    /// <summary>The shop's clock, ISO 8601; recorded, never trusted for order.</summary>
    public required string Received { get; set; }

    /// <summary>The row of an entry, without what the shop adds.</summary>
    public static KeptEntry Of(Entry entry) =>
        new()
        {
            Id = entry.Id,
            Shop = entry.Shop,
            Job = entry.Job,
            Device = entry.Device,
            Epoch = entry.Epoch,
            Seq = entry.Seq,
            Kind = entry.Kind,
            Body = CanonicalJson.Of(entry.Body),
            Strikes = entry.Strikes,
            Covers = entry.Covers is null ? null : CanonicalJson.Of(entry.Covers),
            At = entry.At,
            By = entry.By,
            DevicePrevious = entry.DevicePrevious,
            Hash = entry.Hash,
            JobHash = "",
            Received = "",
        };

    /// <summary>The row of an entry.</summary>
    public static KeptEntry Of(Entry entry, long order, string jobHash, DateTimeOffset received)
    {
        var row = Of(entry);
        (row.Order, row.JobHash, row.Received) = (order, jobHash, Moment.Text(received));
        return row;
    }

    /// <summary>The entry as the device wrote it.</summary>
    /// <exception cref="JsonException">The row was changed and holds no JSON any more.</exception>
    public Entry Entry() =>
        new(
            Id,
            Shop,
            Job,
            Device,
            Epoch,
            Seq,
            Kind,
            Parsed(Body),
            Strikes,
            Covers is null ? null : Counts(Parsed(Covers)),
            At,
            By,
            DevicePrevious,
            Hash
        );

    private static Dictionary<string, int> Counts(JsonElement covers) =>
        covers.EnumerateObject().ToDictionary(c => c.Name, c => c.Value.GetInt32(), StringComparer.Ordinal);

    private static JsonElement Parsed(string text)
    {
        using var document = JsonDocument.Parse(text);
        return document.RootElement.Clone();
    }
}
