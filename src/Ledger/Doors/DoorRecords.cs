namespace Witnessmark.Ledger.Doors;

/// <summary>What is kept of somebody who may sign in.</summary>
/// <param name="Name">As the shop's file has it.</param>
/// <param name="Hash">Of the secret; null until one was chosen.</param>
/// <param name="Failures">Wrong secrets in a row.</param>
/// <param name="WaitUntil">Before this nothing is tried.</param>
/// <param name="Shut">Nothing is tried until a lead gives a new start code.</param>
public sealed record KeptPerson(string Name, string? Hash, int Failures, DateTimeOffset? WaitUntil, bool Shut);

/// <summary>A device that was let in.</summary>
/// <param name="Id">Its name in every entry.</param>
/// <param name="Label">What people call it.</param>
/// <param name="KeyX">Of its public key on P-256, base64url.</param>
/// <param name="KeyY">The other coordinate.</param>
/// <param name="Shared">Whether several people work with it.</param>
/// <param name="LetInBy">Which lead gave the code.</param>
/// <param name="At">When it was let in.</param>
/// <param name="Revoked">When it was shut out again; null while it may come in.</param>
/// <param name="RevokedBy">By whom.</param>
public sealed record KeptDevice(
    string Id,
    string Label,
    string KeyX,
    string KeyY,
    bool Shared,
    string LetInBy,
    DateTimeOffset At,
    DateTimeOffset? Revoked = null,
    string? RevokedBy = null
);

/// <summary>A code that is good for one use.</summary>
/// <param name="Hash">Of the code.</param>
/// <param name="Person">Whose first secret it opens; null: it lets a device in.</param>
/// <param name="GivenBy">Which lead gave it.</param>
/// <param name="Until">Before this it is good.</param>
public sealed record KeptCode(string Hash, string? Person, string GivenBy, DateTimeOffset Until);

/// <summary>Somebody who is signed in.</summary>
/// <param name="Hash">Of the session's token.</param>
/// <param name="Person">Who.</param>
/// <param name="Device">Where.</param>
/// <param name="Started">Since when.</param>
/// <param name="Deed">When they last did something themselves.</param>
public sealed record KeptSession(
    string Hash,
    string Person,
    string Device,
    DateTimeOffset Started,
    DateTimeOffset Deed
);

/// <summary>Something that happened at the door. Events are only ever added.</summary>
/// <param name="Number">From 1, without gaps.</param>
/// <param name="At">When.</param>
/// <param name="What">Which kind of event.</param>
/// <param name="Person">Who, as far as known.</param>
/// <param name="Device">Where, as far as known.</param>
/// <param name="Says">A sentence.</param>
/// <param name="Chain">SHA-256 over the chain before it and this event.</param>
public sealed record DoorEvent(
    long Number,
    DateTimeOffset At,
    string What,
    string? Person,
    string? Device,
    string Says,
    string Chain
);
