using Witnessmark.Bench.Record;

namespace Witnessmark.Doors;

/// <summary>A device that wants in.</summary>
internal sealed record EnrolAsked(
    string? Code,
    string? Device,
    string? Label,
    string? X,
    string? Y,
    bool Shared,
    string? Nonce,
    string? Signature
);

/// <summary>A device that shows itself, and what it wants.</summary>
internal sealed record SignInAsked(
    string? Device,
    string? Nonce,
    string? Signature,
    string? Person = null,
    string? Secret = null,
    string? Code = null
)
{
    /// <summary>What it shows.</summary>
    public DeviceProof Proof => new(Device ?? "", Nonce ?? "", Signature ?? "");
}

/// <summary>Somebody who closes the door, with the device that they do it on.</summary>
internal sealed record CloseAsked(
    string? Lead,
    string? Secret,
    string? Device,
    string? Label,
    string? X,
    string? Y,
    bool Shared
);

/// <summary>Somebody who shows again who they are.</summary>
internal sealed record ShowAsked(string? Secret);

/// <summary>Somebody who takes another secret.</summary>
internal sealed record ChangeAsked(string? Secret, string? Next);

/// <summary>Somebody who releases a job.</summary>
internal sealed record ConfirmAsked(string? Job, string? Secret);

/// <summary>Somebody who gives their word for an entry.</summary>
/// <param name="Job">The job that it belongs to.</param>
/// <param name="Kind">Its kind.</param>
/// <param name="Person">Whose word it is.</param>
/// <param name="Secret">What only they know.</param>
/// <param name="About">The point or the number of the campaign.</param>
/// <param name="Figure">What they vouch for, or null.</param>
internal sealed record WordAsked(
    string? Job,
    string? Kind,
    string? Person,
    string? Secret,
    string? About,
    string? Figure = null
)
{
    /// <summary>The word; null where an entry of that kind counts by none.</summary>
    public Word? Word =>
        (Kind, Person, About, Figure) switch
        {
            (EntryKind.Dropped, { } lead, { } point, null) => Word.OfDrop(lead, point),
            (EntryKind.Vouch, { } name, { } point, { } figure) => Word.OfVouching(name, point, figure),
            (EntryKind.CampaignLeft, { } name, { } number, null) => Word.OfLeaving(name, number),
            _ => null,
        };
}
