using System.Globalization;
using Witnessmark.Ledger.Doors;

namespace Witnessmark.Doors;

/// <summary>What a device shows of itself.</summary>
/// <param name="Device">Its name.</param>
/// <param name="Nonce">The shop's number.</param>
/// <param name="Signature">Over the statement.</param>
public sealed record DeviceProof(string Device, string Nonce, string Signature);

/// <summary>Somebody as a device that was let in may know them.</summary>
/// <param name="Name">Who.</param>
/// <param name="Role">What they may do.</param>
/// <param name="Started">Whether they have chosen a secret.</param>
public sealed record PersonAtDoor(string Name, Role Role, bool Started);

public sealed partial class Door
{
    private static Sentence NotLetIn => $"This device was not let in, or was shut out. A lead gives a code for it.";
    private static Sentence WrongCode => $"The code is wrong or over. A lead gives a new one.";
    private static Sentence ShutToName =>
        $"Too many wrong ones: the door is shut to this name until a lead gives a new start code.";
    private static Sentence WrongSecret => $"That is not it.";

    /// <summary>Who may sign in here.</summary>
    public Answered<IReadOnlyList<PersonAtDoor>> Names(DeviceProof proof) =>
        There.Do(rows =>
            Shown(rows, proof, "names", "") is { } no
                ? Answered<IReadOnlyList<PersonAtDoor>>.Because(no)
                : new Answered<IReadOnlyList<PersonAtDoor>>(Everybody(rows), null, 200)
        );

    /// <summary>Signs somebody in.</summary>
    public Answered<CameIn> SignIn(DeviceProof proof, string person, string secret) =>
        There.Do(rows =>
            (Shown(rows, proof, "sign in", person) ?? Tried(rows, proof.Device, person, secret)) is { } no
                ? Answered<CameIn>.Because(no)
                : In(rows, proof.Device, person)
        );

    /// <summary>Takes a start code and the secret that a person chose, and signs them in.</summary>
    public Answered<CameIn> Start(DeviceProof proof, string person, string code, string secret) =>
        There.Do(rows =>
        {
            if (Shown(rows, proof, "start", person) is { } no)
                return Answered<CameIn>.Because(no);
            if (shop().RoleOf(person) is not { } role)
                return Answered<CameIn>.Because(WrongCode); // nothing is kept of names that nobody has
            // before the code is taken: whoever chose badly chooses again
            if (SecretRules.Refuses(secret, role, person, shop().Name) is { } why)
                return Answered<CameIn>.Because(why, 400);
            if (Taken(rows, code) is not { } good || good.Person != person)
            {
                Write(rows, DoorEvents.Refused, person, proof.Device, BookLine.WrongStartCode(person));
                return Answered<CameIn>.Because(WrongCode);
            }
            rows.Put(new(person, SecretHash.Of(person, secret), 0, null, false));
            rows.EndAllOf(person);
            Write(rows, DoorEvents.SecretChosen, person, proof.Device, BookLine.SecretChosen(person));
            return In(rows, proof.Device, person);
        });

    /// <summary>Somebody who is in shows again who they are, to release a job.</summary>
    public Answered<string> Confirm(SignedIn who, string job, string secret) =>
        There.Do(rows =>
        {
            if (Tried(rows, who.Device, who.Person, secret) is { } no)
                return Answered<string>.Because(no);
            Write(rows, DoorEvents.Confirmed, who.Person, who.Device, BookLine.Confirmed(who.Person, job));
            return Confirmation.Make(KeyIn(rows), Now, who.Person, who.Device, job);
        });

    /// <summary>Writes down that an entry came without what shows whose word it counts by: it does not count.</summary>
    public void Unconfirmed(string entry, string what, SignedIn who, BookLine says) =>
        There.Do(rows =>
        {
            if (rows.Flag(entry))
                Write(rows, what, who.Person, who.Device, says);
            return true;
        });

    /// <summary>Entries that do not count: nobody showed whose word they count by.</summary>
    public IReadOnlySet<string> NotCounting => Store?.NotCounting() ?? new HashSet<string>();

    /// <summary>Whether the shop gave a confirmation to this person on this device for this job, and no other entry came with it.</summary>
    public bool IsConfirmed(string? confirmation, string entry, string person, string device, string job) =>
        confirmation is not null
        && Confirmation.Fits(confirmation, Key, person, device, job)
        && There.Do(rows => rows.Use(confirmation, entry));

    private List<PersonAtDoor> Everybody(DoorRows rows) =>
        [
            .. shop()
                .Everybody()
                .Select(name => new PersonAtDoor(name, shop().RoleOf(name)!.Value, rows.Person(name).Hash is not null)),
        ];

    /// <summary>Why a device did not show that it is the one; null when it did.</summary>
    private Sentence? Shown(DoorRows rows, DeviceProof proof, string deed, string person)
    {
        if (rows.Device(proof.Device) is not { Revoked: null } device)
        {
            if (rows.Device(proof.Device) is not null)
                Write(rows, DoorEvents.Refused, null, proof.Device, BookLine.ShutDeviceCame());
            return NotLetIn;
        }
        if (!DeviceKey.Signed(device, DeviceKey.Statement(deed, proof.Nonce, proof.Device, person), proof.Signature))
            return $"The device did not show that it holds its key.";
        return Fresh(rows, proof.Nonce) ? null : (Sentence)$"That took too long. Try once more.";
    }

    /// <summary>Why a secret does not open; null when it does.</summary>
    private Sentence? Tried(DoorRows rows, string device, string person, string secret)
    {
        var kept = rows.Person(person);
        if (kept.Shut)
            return ShutToName;
        if (kept.WaitUntil is { } until && Now < until)
            return $"After wrong ones the door waits. Try again in {Long(until - Now)}.";
        if (shop().RoleOf(person) is not null && SecretHash.Fits(person, kept.Hash, secret) is { } hash)
        {
            if (kept.Failures > 0 || hash != kept.Hash)
                rows.Put(kept with { Hash = hash, Failures = 0, WaitUntil = null });
            return null;
        }
        return Failed(rows, device, kept);
    }

    private Sentence Failed(DoorRows rows, string device, KeptPerson person)
    {
        if (shop().RoleOf(person.Name) is null)
            return WrongSecret; // nothing is kept of names that nobody has
        var failures = person.Failures + 1;
        var wait = Waits.After(failures);
        rows.Put(person with { Failures = failures, WaitUntil = Now + wait, Shut = wait is null });
        Write(
            rows,
            wait is null ? DoorEvents.Shut : DoorEvents.Refused,
            person.Name,
            device,
            wait is null ? BookLine.Shut(person.Name, failures) : BookLine.WrongSecret(person.Name, failures)
        );
        return wait is null ? ShutToName
            : wait == TimeSpan.Zero ? WrongSecret
            : (Sentence)$"{WrongSecret} Try again in {Long(wait.Value)}.";
    }

    private CameIn In(DoorRows rows, string device, string person)
    {
        var token = Token.Drawn();
        var session = new KeptSession(Token.Hash(token), person, device, Now, Now);
        rows.Add(session);
        Write(rows, DoorEvents.SignedIn, person, device, BookLine.SignedIn(person));
        var until = SessionLife.End(session, rows.Device(device)!.Shared);
        return new(token, new(person, shop().RoleOf(person)!.Value, device, until, Now));
    }

    private static string Long(TimeSpan wait) =>
        wait.TotalSeconds <= 90
            ? string.Create(CultureInfo.InvariantCulture, $"{Math.Ceiling(wait.TotalSeconds):0} s")
            : string.Create(CultureInfo.InvariantCulture, $"{Math.Ceiling(wait.TotalMinutes):0} min");
}
