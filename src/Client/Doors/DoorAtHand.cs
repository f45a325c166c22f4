using Microsoft.JSInterop;
using Witnessmark.Bench.Record;
using Witnessmark.Client.Device;

namespace Witnessmark.Client.Doors;

/// <summary>Where this device stands with the shop's door.</summary>
internal enum DoorState
{
    /// <summary>The shop was not asked yet, or does not answer.</summary>
    Unknown,

    /// <summary>The shop has no door: whoever is here may work.</summary>
    Open,

    /// <summary>This device was not let in, or nobody knows yet.</summary>
    Stranger,

    /// <summary>Nobody is signed in.</summary>
    SignedOut,

    /// <summary>Somebody is.</summary>
    In,
}

/// <summary>
/// The shop's door as this device knows it. No secret is kept here and none can be checked without the shop: while it does not answer,
/// whoever signed in last goes on, and what they write is kept until the shop asks again.
/// </summary>
internal sealed class DoorAtHand(ShopDoor shop, DoorKey key, DeviceLedger ledger) : IDisposable
{
    private const string ClosedFact = "closed";
    private const string LeavingFact = "leaving";
    private static readonly TimeSpan Every = TimeSpan.FromMinutes(1);
    private DotNetObjectReference<DoorAtHand>? self;

    /// <summary>It changed.</summary>
    public event Action? Changed;

    public DoorState State { get; private set; }

    /// <summary>What somebody may do here; null while nobody is signed in.</summary>
    public string? Role { get; private set; }

    /// <summary>Whether the shop was met with its door closed.</summary>
    public bool IsClosed =>
        State is not DoorState.Open && (State != DoorState.Unknown || ledger.Facts.Door is not null);

    /// <summary>Whether nothing is shown before somebody signed in.</summary>
    public bool Asks => State is DoorState.Stranger or DoorState.SignedOut || (IsClosed && ledger.Facts.Person is null);

    public bool IsLead => Role == "lead";

    /// <summary>Asks the shop how things stand.</summary>
    public async Task Look()
    {
        if (ledger.Facts.Door == LeavingFact)
            await Leave();
        var door = await shop.Look();
        if (!door.Closed)
            await Stands(DoorState.Open);
        else if (door.You is { } you)
            await In(you);
        else
            await Stands(State == DoorState.Stranger ? DoorState.Stranger : DoorState.SignedOut);
        if (self is null)
        {
            self = DotNetObjectReference.Create(this);
            await key.Watch(self, Every);
        }
    }

    /// <summary>The shop does not know any more who is here.</summary>
    public async Task Lost()
    {
        if (State == DoorState.In)
            await Stands(DoorState.SignedOut);
        else
            await Look();
    }

    /// <summary>Somebody types or touches: the shop must not sign them out.</summary>
    [JSInvokable]
    public async Task SomebodyIsHere()
    {
        if (State != DoorState.In)
            return;
        try
        {
            if ((await shop.Post("here", new(), DoorJson.Default.YouReply)).No is not null)
                await Lost();
        }
        catch (ShopTrouble)
        {
            // without the shop nobody is signed out
        }
    }

    /// <summary>Who may sign in here; the shop's no when this device is not let in.</summary>
    public async Task<(IReadOnlyList<NameReply>? Names, string? No)> Names()
    {
        var (reply, no) = await shop.Post("names", await Proof("names", ""), DoorJson.Default.NamesReply);
        if (no is not null)
            await Stands(DoorState.Stranger);
        return (reply?.People, no);
    }

    /// <summary>Signs in; null, or the shop's no.</summary>
    public async Task<string?> SignIn(string person, string secret) =>
        await CameIn("sign-in", await Proof("sign in", person) with { Person = person, Secret = secret });

    /// <summary>Chooses a secret by a start code and signs in; null, or the shop's no.</summary>
    public async Task<string?> Start(string person, string code, string secret) =>
        await CameIn("start", await Proof("start", person) with { Person = person, Code = code, Secret = secret });

    /// <summary>Brings this device in by a code; null, or the shop's no.</summary>
    public async Task<string?> Enrol(string code, string label, bool shared)
    {
        var request = await Described(label, shared);
        var proof = await Proof("enrol", "");
        var (_, no) = await shop.Post(
            "enrol",
            request with
            {
                Code = code,
                Nonce = proof.Nonce,
                Signature = proof.Signature,
            },
            DoorJson.Default.EnrolledReply
        );
        if (no is null)
            await Stands(DoorState.SignedOut);
        return no;
    }

    /// <summary>Closes the shop's door, with this device inside; null, or the shop's no.</summary>
    public async Task<string?> Close(string lead, string secret, string label, bool shared) =>
        await CameIn("close", await Described(label, shared) with { Lead = lead, Secret = secret });

    /// <summary>Shows again who is here, to release a job.</summary>
    public async Task<(string? Confirmed, string? No)> Confirm(string job, string secret)
    {
        var (reply, no) = await shop.Post(
            "confirm",
            new() { Job = job, Secret = secret },
            DoorJson.Default.ConfirmedReply
        );
        return (reply?.Confirmed, no);
    }

    /// <summary>Somebody gives their word for an entry of a job that this device is about to write.</summary>
    public async Task<(string? Given, string? No)> GiveWord(Word word, string job, string secret)
    {
        var request = new DoorRequest
        {
            Job = job,
            Kind = word.Kind,
            Person = word.Name,
            About = word.About[0],
            Figure = word.About.ElementAtOrDefault(1),
            Secret = secret,
        };
        var (reply, no) = await shop.Post("word", request, DoorJson.Default.ConfirmedReply);
        return (reply?.Confirmed, no);
    }

    /// <summary>A lead shows the passphrase again, for what an open session is not enough for; null, or the shop's no.</summary>
    public async Task<string?> ShowAgain(string secret) =>
        (await shop.Post("show", new() { Secret = secret }, DoorJson.Default.YouReply)).No;

    /// <summary>Where else whoever is in here is signed in.</summary>
    public async Task<IReadOnlyList<ElsewhereReply>> Elsewhere() => (await shop.Look()).Elsewhere ?? [];

    /// <summary>Takes another secret in place of one's own; null, or the shop's no.</summary>
    public async Task<string?> ChangeSecret(string secret, string next) =>
        await CameIn("secret", new() { Secret = secret, Next = next });

    /// <summary>Nobody is here any more. Without the shop it learns that later, before anything else.</summary>
    public async Task SignOut()
    {
        await ledger.Remember(facts => facts with { Person = null, Door = LeavingFact });
        try
        {
            await Leave();
        }
        catch (ShopTrouble)
        {
            // said at the next look
        }
        Put(DoorState.SignedOut);
    }

    public Task<(BookReply? Reply, string? No)> Book() => shop.Get("book", DoorJson.Default.BookReply);

    public Task<(CodeReply? Reply, string? No)> DeviceCode() =>
        shop.Post("device-code", new(), DoorJson.Default.CodeReply);

    public Task<(CodeReply? Reply, string? No)> StartCode(string person) =>
        shop.Post($"people/{Uri.EscapeDataString(person)}/code", new(), DoorJson.Default.CodeReply);

    public Task<(EnrolledReply? Reply, string? No)> ShutOut(string device) => shop.ShutOut(device);

    /// <summary>Whether this browser can keep a key at this address.</summary>
    public Task<bool> CanKeepKey() => key.Can();

    public void Dispose() => self?.Dispose();

    private async Task<string?> CameIn(string path, DoorRequest request)
    {
        var (you, no) = await shop.Post(path, request, DoorJson.Default.YouReply);
        if (you is not null)
            await In(you);
        return no;
    }

    private async Task<DoorRequest> Described(string label, bool shared)
    {
        var (x, y) = await key.Public();
        return new()
        {
            Device = ledger.Facts.Device,
            Label = label,
            X = x,
            Y = y,
            Shared = shared,
        };
    }

    private async Task<DoorRequest> Proof(string deed, string person)
    {
        var nonce = (await shop.Look()).Nonce ?? "";
        var device = ledger.Facts.Device;
        return new()
        {
            Device = device,
            Nonce = nonce,
            Signature = await key.Sign(deed, nonce, device, person) ?? "",
        };
    }

    private async Task Leave()
    {
        await shop.Post("sign-out", new(), DoorJson.Default.DoorReply);
        await ledger.Remember(facts => facts with { Door = ClosedFact });
    }

    private async Task In(YouReply you)
    {
        Role = you.Role;
        await ledger.Remember(facts => facts with { Person = you.Person, Door = ClosedFact });
        Put(DoorState.In);
    }

    private async Task Stands(DoorState state)
    {
        var fact = state == DoorState.Open ? null : ClosedFact;
        if (ledger.Facts.Door != fact)
            await ledger.Remember(facts => facts with { Door = fact });
        Put(state);
    }

    private void Put(DoorState state)
    {
        if (state != DoorState.In)
            Role = null;
        State = state;
        Changed?.Invoke();
    }
}
