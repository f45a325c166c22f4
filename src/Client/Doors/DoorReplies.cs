using System.Text.Json.Serialization;

namespace Witnessmark.Client.Doors;

/// <summary>What the shop says at its door.</summary>
internal sealed record DoorReply(
    bool Closed,
    YouReply? You = null,
    string? Nonce = null,
    IReadOnlyList<ElsewhereReply>? Elsewhere = null
);

/// <summary>Another device on which whoever is in is signed in, too.</summary>
internal sealed record ElsewhereReply(string Label, DateTimeOffset Since);

/// <summary>Who is in.</summary>
internal sealed record YouReply(string Person, string Role, string Device, DateTimeOffset Until);

/// <summary>Who may sign in on this device.</summary>
internal sealed record NamesReply(IReadOnlyList<NameReply> People);

/// <summary>Somebody who may.</summary>
public sealed record NameReply(string Name, string Role, bool Started)
{
    /// <summary>Whether the secret is a passphrase and not six digits.</summary>
    public bool IsLead => Role == "lead";
}

/// <summary>A code.</summary>
/// <param name="Code">To be typed.</param>
/// <param name="Picture">The address with the code in it, as a drawing; null where this address is good on one computer only.</param>
internal sealed record CodeReply(string Code, string? Picture = null);

/// <summary>What was given for showing again who one is.</summary>
internal sealed record ConfirmedReply(string Confirmed);

/// <summary>A device that was let in.</summary>
internal sealed record EnrolledReply(string Label, string LetInBy);

/// <summary>The book of the door.</summary>
internal sealed record BookReply(
    IReadOnlyList<BookPerson> People,
    IReadOnlyList<BookDevice> Devices,
    IReadOnlyList<BookEvent> Events,
    string? Fault
);

internal sealed record BookPerson(string Name, string Role, bool Started, bool Shut, DateTimeOffset? CodeUntil);

internal sealed record BookDevice(
    string Id,
    string Label,
    bool Shared,
    string LetInBy,
    DateTimeOffset At,
    DateTimeOffset? Revoked,
    string? Here = null,
    DateTimeOffset? Since = null
);

internal sealed record BookEvent(DateTimeOffset At, string What, string Says);

/// <summary>What is sent: only what a request needs is in it.</summary>
internal sealed record DoorRequest
{
    public string? Device { get; init; }
    public string? Nonce { get; init; }
    public string? Signature { get; init; }
    public string? Person { get; init; }
    public string? Secret { get; init; }
    public string? Next { get; init; }
    public string? Code { get; init; }
    public string? Lead { get; init; }
    public string? Label { get; init; }
    public string? X { get; init; }
    public string? Y { get; init; }
    public bool? Shared { get; init; }
    public string? Job { get; init; }
    public string? Kind { get; init; }
    public string? About { get; init; }
    public string? Figure { get; init; }
}

[JsonSourceGenerationOptions(
    GenerationMode = JsonSourceGenerationMode.Metadata,
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull
)]
[JsonSerializable(typeof(DoorReply))]
[JsonSerializable(typeof(YouReply))]
[JsonSerializable(typeof(NamesReply))]
[JsonSerializable(typeof(CodeReply))]
[JsonSerializable(typeof(ConfirmedReply))]
[JsonSerializable(typeof(EnrolledReply))]
[JsonSerializable(typeof(BookReply))]
[JsonSerializable(typeof(DoorRequest))]
internal sealed partial class DoorJson : JsonSerializerContext;
