using Witnessmark.Ledger.Doors;

namespace Witnessmark.Doors;

/// <summary>The book of the door.</summary>
/// <param name="People">Who may sign in.</param>
/// <param name="Devices">What was let in, the newest first.</param>
/// <param name="Events">What happened, the newest first.</param>
/// <param name="Fault">Where the events are not as they were written; null: nowhere.</param>
public sealed record BookOfDoor(
    IReadOnlyList<PersonInBook> People,
    IReadOnlyList<DeviceInBook> Devices,
    IReadOnlyList<EventInBook> Events,
    string? Fault
);

/// <summary>Somebody in the book.</summary>
/// <param name="Name">Who.</param>
/// <param name="Role">What they may do.</param>
/// <param name="Started">Whether they have chosen a secret.</param>
/// <param name="Shut">Whether the door is shut to them.</param>
/// <param name="CodeUntil">Until when their start code is good; null: they have none.</param>
public sealed record PersonInBook(string Name, string Role, bool Started, bool Shut, DateTimeOffset? CodeUntil);

/// <summary>A device in the book.</summary>
/// <param name="Id">Its name in entries.</param>
/// <param name="Label">What people call it.</param>
/// <param name="Shared">Whether several people work with it.</param>
/// <param name="LetInBy">Who gave the code.</param>
/// <param name="At">When it came in.</param>
/// <param name="Revoked">When it was shut out; null: it was not.</param>
/// <param name="Here">Who is signed in on it now; null: nobody.</param>
/// <param name="Since">Since when; null: nobody is.</param>
public sealed record DeviceInBook(
    string Id,
    string Label,
    bool Shared,
    string LetInBy,
    DateTimeOffset At,
    DateTimeOffset? Revoked,
    string? Here = null,
    DateTimeOffset? Since = null
);

/// <summary>An event in the book.</summary>
/// <param name="At">When.</param>
/// <param name="What">Which kind.</param>
/// <param name="Says">A sentence.</param>
public sealed record EventInBook(DateTimeOffset At, string What, string Says);

/// <summary>Another device on which somebody is signed in.</summary>
/// <param name="Label">What people call it.</param>
/// <param name="Since">Since when they are.</param>
public sealed record SignedInElsewhere(string Label, DateTimeOffset Since);

public sealed partial class Door
{
    /// <summary>The book with its newest events.</summary>
    public BookOfDoor Book(int newest) =>
        There.Look(rows => new BookOfDoor(
            [
                .. Everybody(rows)
                    .Select(p => new PersonInBook(
                        p.Name,
                        p.Role.Word(),
                        p.Started,
                        rows.Person(p.Name).Shut,
                        rows.CodeOf(p.Name, Now)
                    )),
            ],
            Devices(rows),
            [.. rows.Events(newest).Select(e => new EventInBook(e.At, e.What, e.Says))],
            EventChain.Fault(rows.AllEvents())
        ));

    /// <summary>Where else somebody is signed in; another secret of theirs ends it there.</summary>
    public IReadOnlyList<SignedInElsewhere> ElsewhereOf(SignedIn who) =>
        There.Look(rows =>
            (IReadOnlyList<SignedInElsewhere>)
                [
                    .. Devices(rows)
                        .Where(d => d.Here == who.Person && d.Id != who.Device)
                        .Select(d => new SignedInElsewhere(d.Label, d.Since!.Value)),
                ]
        );

    /// <summary>All that ever happened, in its order.</summary>
    public IReadOnlyList<DoorEvent> AllEvents() => There.Look(rows => rows.AllEvents());

    private DeviceInBook[] Devices(DoorRows rows)
    {
        var sessions = rows.Sessions().ToDictionary(s => s.Device);
        return
        [
            .. rows.Devices()
                .Select(d =>
                {
                    var here =
                        sessions.GetValueOrDefault(d.Id) is { } s && SessionLife.End(s, d.Shared) > Now ? s : null;
                    return new DeviceInBook(
                        d.Id,
                        d.Label,
                        d.Shared,
                        d.LetInBy,
                        d.At,
                        d.Revoked,
                        here?.Person,
                        here?.Started
                    );
                }),
        ];
    }

    /// <summary>Closes the door on the device that a lead has in hand: it is let in, and the lead is signed in.</summary>
    public Answered<CameIn> CloseOn(KeptDevice device, string lead, string secret)
    {
        if (Unfit(device) is { } unfit)
            return Answered<CameIn>.Because(unfit, 400);
        var closed = Close(lead, secret);
        if (closed.No is { } no)
            return Answered<CameIn>.Because(no, closed.Status);
        return There.Do(rows =>
        {
            if (rows.Device(device.Id) is null)
            {
                rows.Add(device with { Label = device.Label.Trim(), LetInBy = lead, At = Now });
                Write(rows, DoorEvents.DeviceIn, lead, device.Id, BookLine.DeviceIn(device.Label.Trim()));
            }
            return In(rows, device.Id, lead);
        });
    }
}
