using Witnessmark.Ledger.Doors;

namespace Witnessmark.Doors;

public sealed partial class Door
{
    private const int LongestLabel = 60;

    /// <summary>A code that lets one device in.</summary>
    public string DeviceCode(string by) => Give(null, by, DeviceCodeLife, BookLine.DeviceCode(by));

    /// <summary>A code by which a person chooses a secret; whoever was signed in under the name is out.</summary>
    public Answered<string> StartCode(string person, string by)
    {
        if (shop().RoleOf(person) is null)
            return Answered<string>.Because($"The shop's file knows no \"{person}\".", 404);
        There.Do(rows =>
        {
            rows.DropCodesOf(person);
            rows.EndAllOf(person);
            return true;
        });
        return Give(person, by, StartCodeLife, BookLine.StartCode(by, person));
    }

    /// <summary>Lets a device in by a code.</summary>
    public Answered<KeptDevice> LetIn(string code, KeptDevice device, string nonce, string signature)
    {
        if (Unfit(device) is { } unfit)
            return Answered<KeptDevice>.Because(unfit, 400);
        return There.Do(rows => LetIn(rows, code, device, nonce, signature));
    }

    /// <summary>Shuts a device out, and whoever is signed in on it.</summary>
    public Answered<KeptDevice> ShutOut(string device, string by) =>
        There.Do(rows =>
        {
            if (rows.Device(device) is not { } known)
                return Answered<KeptDevice>.Because($"No device \"{device}\" was ever let in.", 404);
            rows.Revoke(device, by, Now);
            Write(rows, DoorEvents.DeviceOut, by, device, BookLine.DeviceOut(by, known.Label));
            return known;
        });

    private Answered<KeptDevice> LetIn(DoorRows rows, string code, KeptDevice device, string nonce, string signature)
    {
        if (!DeviceKey.Signed(device.KeyX, device.KeyY, DeviceKey.Statement("enrol", nonce, device.Id, ""), signature))
            return Answered<KeptDevice>.Because($"The device did not show that it holds its key.");
        if (!Fresh(rows, nonce))
            return Answered<KeptDevice>.Because($"That took too long. Try once more.");
        if (rows.Device(device.Id) is not null)
            return Answered<KeptDevice>.Because(
                $"A device of that name was let in before. Clear this site's data in the browser and start anew.",
                409
            );
        if (Taken(rows, code) is not { Person: null } good)
        {
            Write(rows, DoorEvents.Refused, null, device.Id, BookLine.WrongDeviceCode(device.Label));
            return Answered<KeptDevice>.Because(WrongCode);
        }
        var kept = device with { Label = device.Label.Trim(), LetInBy = good.GivenBy, At = Now };
        rows.Add(kept);
        Write(rows, DoorEvents.DeviceIn, good.GivenBy, kept.Id, BookLine.DeviceIn(kept.Label));
        return kept;
    }

    private string Give(string? person, string by, TimeSpan life, BookLine says)
    {
        var code = Token.Code();
        There.Do(rows =>
        {
            rows.Add(new KeptCode(Token.SlowHash(code, KeyIn(rows)), person, by, Now + life));
            Write(rows, DoorEvents.CodeGiven, by, null, says);
            return true;
        });
        return Token.Shown(code);
    }

    // what is written into the book must not look like another line of it
    private static Sentence? Unfit(KeptDevice device) =>
        device.Label.Trim().Length is 0 or > LongestLabel || device.Label.Any(char.IsControl)
            ? (Sentence)
                $"The device needs a name of at most {LongestLabel} characters, without line breaks and the like."
        : device.Id.Length is 0 or > LongestLabel || !device.Id.All(c => char.IsAsciiLetterOrDigit(c) || c == '-')
            ? (Sentence)$"The device's own name is letters, digits and dashes."
        : DeviceKey.IsKey(device.KeyX, device.KeyY) ? null
        : (Sentence)$"That is no key of a device.";

    // an earlier program kept the plain hash of a code; one that it gave is good for a day at most
    private KeptCode? Taken(DoorRows rows, string typed)
    {
        var code = Token.Typed(typed);
        return rows.Take(Token.SlowHash(code, KeyIn(rows)), Now) ?? rows.Take(Token.Hash(code), Now);
    }

    // good once: whoever overhears a signature has nothing
    private bool Fresh(DoorRows rows, string nonce) =>
        Nonce.Until(nonce, KeyIn(rows), Now) is { } until && rows.Use(nonce, until, Now);
}
