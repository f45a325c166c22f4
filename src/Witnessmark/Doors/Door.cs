using Witnessmark.Bench.Machines;
using Witnessmark.Ledger.Doors;

namespace Witnessmark.Doors;

/// <summary>
/// The shop's door. It is open until a lead closes it: then only devices that were let in are spoken to, and only somebody who is signed
/// in on one gets at anything.
/// </summary>
/// <param name="ifThere">What is kept of it; null when the shop never had a door.</param>
/// <param name="there">The same; made when it is not there.</param>
/// <param name="shop">Who works there, as its file says now.</param>
/// <param name="clock">The time.</param>
public sealed partial class Door(
    Func<DoorStore?> ifThere,
    Func<DoorStore> there,
    Func<Workshop> shop,
    TimeProvider clock
)
{
    private static readonly TimeSpan DeviceCodeLife = TimeSpan.FromMinutes(15);
    private static readonly TimeSpan StartCodeLife = TimeSpan.FromHours(24);

    // of what the browser asks by itself nothing may count as a deed, and not every deed is worth a write
    private static readonly TimeSpan DeedStep = TimeSpan.FromSeconds(30);

    private DoorStore? store;
    private bool isClosed;
    private byte[]? key;

    /// <summary>The door of a shop that has all in its data folder.</summary>
    public Door(string folder, Func<Workshop> shop, TimeProvider clock)
        : this(() => DoorStore.OpenIfThere(folder), () => DoorStore.Open(folder), shop, clock) { }

    /// <summary>Whether a lead has closed it.</summary>
    /// <remarks>It stays so, whoever leaves the shop's list afterwards.</remarks>
    public bool IsClosed => isClosed || (isClosed = Store?.Look(rows => rows.IsClosed()) == true);

    /// <summary>Is told each event of the book once it is kept.</summary>
    public Action<DoorEvent> Told { get; set; } = _ => { };

    private DoorStore? Store => store ??= Heard(ifThere());

    private DoorStore There => Store ?? (store = Heard(there())!);

    /// <summary>The key inside a transaction: one of its own, which <see cref="Key"/> opens on first use, would wait for this one.</summary>
    private byte[] KeyIn(DoorRows rows) => key ?? rows.KeyOrNew();

    private byte[] Key => key ??= There.Look(rows => rows.Key()) ?? There.Do(rows => rows.KeyOrNew());

    private DateTimeOffset Now => clock.GetUtcNow();

    /// <summary>A number for a device to sign.</summary>
    public string NewNonce() => Nonce.Make(Key, Now);

    /// <summary>Closes the door: the lead has a secret from now on.</summary>
    public Answered<string> Close(string lead, string secret)
    {
        if (!IsLead(lead))
            return Answered<string>.Because(
                $"\"{lead}\" is no lead of this shop: shop.toml says who is, under [workshop], leads = [\"NAME\"]."
            );
        if (SecretRules.Refuses(secret, Role.Lead, lead, shop().Name) is { } why)
            return Answered<string>.Because(why, 400);
        return There.Do(rows =>
        {
            if (rows.IsClosed())
                return Answered<string>.Because($"The door is closed already.", 409);
            rows.Close(Now);
            rows.Put(new(lead, SecretHash.Of(lead, secret), 0, null, false));
            Write(rows, DoorEvents.Closed, lead, null, BookLine.Closed(lead));
            return lead;
        });
    }

    /// <summary>Who is in with a token; null when nobody is any more.</summary>
    public SignedIn? Who(string token, bool deed)
    {
        if (Store is not { } kept)
            return null;
        var hash = Token.Hash(token);
        var (session, device) = kept.Look(rows =>
            rows.Session(hash) is { } found ? (found, rows.Device(found.Device)) : (null, null)
        );
        if (session is null || device is not { Revoked: null } || shop().RoleOf(session.Person) is not { } role)
            return null;
        if (SessionLife.End(session, device.Shared) <= Now)
        {
            kept.Do(rows => End(rows, session));
            return null;
        }
        if (deed && Now - session.Deed >= DeedStep)
            kept.Do(rows =>
            {
                rows.Deed(hash, Now);
                return true;
            });
        var latest = deed ? session with { Deed = Now } : session;
        return new(session.Person, role, session.Device, SessionLife.End(latest, device.Shared), session.Started);
    }

    /// <summary>Ends a session.</summary>
    public void SignOut(string token) =>
        There.Do(rows =>
        {
            if (rows.Session(Token.Hash(token)) is { } session)
            {
                rows.End(session.Hash);
                Write(rows, DoorEvents.SignedOut, session.Person, session.Device, BookLine.SignedOut(session.Person));
            }
            return true;
        });

    /// <summary>Writes down what somebody who is in did.</summary>
    public void Note(string what, SignedIn who, BookLine says) =>
        There.Do(rows =>
        {
            Write(rows, what, who.Person, who.Device, says);
            return true;
        });

    /// <summary>Every event goes into the book here.</summary>
    private void Write(DoorRows rows, string what, string? person, string? device, BookLine says) =>
        rows.Note(Now, what, person, device, says.ToString());

    private DoorStore? Heard(DoorStore? kept)
    {
        if (kept is not null)
            kept.Told = happened => Told(happened);
        return kept;
    }

    private bool IsLead(string name) => shop().RoleOf(name) == Role.Lead;

    private bool End(DoorRows rows, KeptSession session)
    {
        rows.End(session.Hash);
        Write(rows, DoorEvents.SignedOut, session.Person, session.Device, BookLine.TimeOver(session.Person));
        return true;
    }
}
