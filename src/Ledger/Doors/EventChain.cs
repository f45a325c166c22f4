using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;

namespace Witnessmark.Ledger.Doors;

/// <summary>Binds each event of the door to the one before: a changed or missing one shows.</summary>
public static class EventChain
{
    /// <summary>The chain's value at an event.</summary>
    public static string Next(string before, DoorEvent happened) =>
        Convert.ToHexStringLower(
            SHA256.HashData(
                Encoding.UTF8.GetBytes(
                    JsonSerializer.Serialize(
                        new string?[]
                        {
                            before,
                            happened.Number.ToString(CultureInfo.InvariantCulture),
                            happened.At.ToUnixTimeMilliseconds().ToString(CultureInfo.InvariantCulture),
                            happened.What,
                            happened.Person,
                            happened.Device,
                            happened.Says,
                        }
                    )
                )
            )
        );

    /// <summary>The first event that is not as it was written, in a sentence; null when all are.</summary>
    public static string? Fault(IEnumerable<DoorEvent> events)
    {
        var (before, number) = ("", 0L);
        foreach (var happened in events)
        {
            if (happened.Number != ++number)
                return $"Event {number} of the door is missing: {happened.Number} follows {number - 1}.";
            if (happened.Chain != Next(before, happened))
                return $"Event {number} of the door, \"{happened.Says}\", was changed after it was written.";
            before = happened.Chain;
        }
        return null;
    }
}
