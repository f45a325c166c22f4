using System.Text.Json;
using Witnessmark.Client.Device;

namespace Witnessmark.Client.Bench;

/// <summary>A half-typed reading as it survives a reload.</summary>
/// <param name="Texts">What stands in the boxes.</param>
/// <param name="At">The box in hand.</param>
/// <param name="With">Id of the instrument, or null.</param>
/// <param name="Told">For each box the sense and the uncertainty where the device told it, <c>microphone 0.05 Hz</c>; null where it was typed.</param>
internal sealed record DraftText(IReadOnlyList<string> Texts, int At, string? With, IReadOnlyList<string?>? Told = null)
{
    public string Write() => JsonSerializer.Serialize(this, DeviceJson.Default.DraftText);

    /// <summary>What was kept; null when it cannot be read.</summary>
    public static DraftText? Read(string text)
    {
        try
        {
            return JsonSerializer.Deserialize(text, DeviceJson.Default.DraftText);
        }
        catch (JsonException)
        {
            return null; // written by an older program: it was no fact yet
        }
    }
}
