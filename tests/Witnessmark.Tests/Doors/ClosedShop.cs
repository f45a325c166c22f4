using Witnessmark.Bench.Machines;
using Witnessmark.Doors;
using Witnessmark.Ledger.Doors;
using Witnessmark.Tests.Serve;

namespace Witnessmark.Tests.Doors;

/// <summary>An invented shop whose door Ines closed, with one tablet inside and a clock that is moved by hand.</summary>
internal sealed class ClosedShop : IDisposable
{
    public const string Lead = "Ines Tallow";
    public const string Technician = "Bram Okello";
    public const string Reader = "Odo Fenn";
    public const string Passphrase = "nine grey herons on the weir";
    public const string Pin = "480913";

    private readonly TempFolder folder = new();

    public ClosedShop(bool shared = true)
    {
        Door = Reopened();
        Assert.Null(Door.Close(Lead, Passphrase).No);
        Assert.Null(LetIn(Tablet, shared).No);
    }

    public SetClock Clock { get; } = new();

    public TestDevice Tablet { get; } = new("d-tablet");

    public Door Door { get; }

    public string Folder => folder.Path;

    public Workshop Workshop { get; set; } =
        new(
            "harrow-lane",
            "Harrow Lane",
            [Lead, Technician],
            new Dictionary<string, ShopInstrument>(),
            new Dictionary<string, Machine>()
        )
        {
            Leads = [Lead],
            Readers = [Reader],
        };

    public Door Reopened() => new(folder.Path, () => Workshop, Clock);

    public Answered<KeptDevice> LetIn(TestDevice device, bool shared = true)
    {
        var nonce = Door.NewNonce();
        return Door.LetIn(Door.DeviceCode(Lead), device.Described(shared), nonce, device.Sign("enrol", nonce));
    }

    /// <summary>The technician with a secret, signed in.</summary>
    public CameIn Started(string person = Technician, string secret = Pin)
    {
        var code = Door.StartCode(person, Lead).Yes!;
        return Door.Start(Tablet.Proof(Door, "start", person), person, code, secret).Yes!;
    }

    public Answered<CameIn> SignIn(string person, string secret) =>
        Door.SignIn(Tablet.Proof(Door, "sign in", person), person, secret);

    public IReadOnlyList<DoorEvent> Events() => DoorStore.Open(folder.Path).Look(rows => rows.AllEvents());

    public void Dispose()
    {
        Tablet.Dispose();
        folder.Dispose();
    }
}
