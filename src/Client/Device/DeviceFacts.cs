using System.Text.Json.Serialization;

namespace Witnessmark.Client.Device;

/// <summary>What the device knows of itself, kept beside the entries.</summary>
internal sealed record DeviceFacts
{
    /// <summary>This device's name in every entry; a wiped device takes a new one and so begins a new chain.</summary>
    public string Device { get; init; } = "";

    /// <summary>Number of the last own entry.</summary>
    public int HeadSeq { get; init; }

    /// <summary>Its hash.</summary>
    public string? HeadHash { get; init; }

    /// <summary>Who works with this device.</summary>
    public string? Person { get; init; }

    /// <summary><c>closed</c> when the shop's door was met closed, <c>leaving</c> while the shop does not know yet that somebody signed out.</summary>
    public string? Door { get; init; }

    /// <summary>Identity of the shop's ledger as last met.</summary>
    public string? Ledger { get; init; }

    /// <summary>Up to which place in the shop's order others' entries were fetched.</summary>
    public int Pulled { get; init; }

    /// <summary>Up to which own number the shop said that it has all.</summary>
    public int Confirmed { get; init; }

    /// <summary>Up to which own number entries were sent; those between here and <see cref="Confirmed"/> were set aside.</summary>
    public int Sent { get; init; }

    /// <summary>Entries of which the shop said that they count for nothing; null: of none yet.</summary>
    public IReadOnlyList<string>? NotCounting { get; init; }

    /// <summary><c>on</c> when the end of a timer is heard.</summary>
    public string? Sound { get; init; }

    /// <summary>The day plan as last fetched, as the reply stood.</summary>
    public string? Day { get; init; }

    /// <summary>The shop's files as last fetched, as the reply stood.</summary>
    public string? Workbench { get; init; }

    /// <summary>What the shop calls the files as they are in <see cref="Workbench"/> (an entity tag, RFC 9110, 8.8.3).</summary>
    public string? WorkbenchTag { get; init; }

    /// <summary>With some more entries that count for nothing; the same where there are none.</summary>
    public DeviceFacts WithoutCounting(IReadOnlyList<string> more) =>
        more.Except(NotCounting ?? []).Any() ? this with { NotCounting = [.. (NotCounting ?? []).Union(more)] } : this;

    /// <summary>All but the head of its chain, which only writing moves, by the names under which they are kept.</summary>
    public (string Name, object? Value)[] Kept() =>
        [
            ("ledger", Ledger),
            ("pulled", Pulled),
            ("confirmed", Confirmed),
            ("sent", Sent),
            ("notCounting", NotCounting),
            ("person", Person),
            ("door", Door),
            ("workbench", Workbench),
            ("workbenchTag", WorkbenchTag),
            ("sound", Sound),
            ("day", Day),
        ];
}

/// <summary>The head of this device's chain as another tab left it.</summary>
internal sealed record Head(int HeadSeq, string? HeadHash);

/// <summary>Space in the browser's store, in bytes.</summary>
internal sealed record StoreSpace(double Usage, double Quota, bool Kept);

[JsonSourceGenerationOptions(
    GenerationMode = JsonSourceGenerationMode.Metadata,
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase
)]
[JsonSerializable(typeof(DeviceFacts))]
[JsonSerializable(typeof(Head))]
[JsonSerializable(typeof(StoreSpace))]
[JsonSerializable(typeof(WorkbenchReply))]
[JsonSerializable(typeof(TakenReply))]
[JsonSerializable(typeof(RefusedReply))]
[JsonSerializable(typeof(FigureRequest))]
[JsonSerializable(typeof(CampaignsReply))]
[JsonSerializable(typeof(StockReply))]
[JsonSerializable(typeof(MoveRequest))]
[JsonSerializable(typeof(MoveReply))]
[JsonSerializable(typeof(FoundReply))]
[JsonSerializable(typeof(MachineReply))]
[JsonSerializable(typeof(FleetReply))]
[JsonSerializable(typeof(Bench.DraftText))]
[JsonSerializable(typeof(Today.LastJobs))]
internal sealed partial class DeviceJson : JsonSerializerContext;
