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
