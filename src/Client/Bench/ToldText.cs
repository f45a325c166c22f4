using Witnessmark.Bench.Judging;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Client.Bench;

/// <summary>What the device told of a value, as text that survives a reload: <c>microphone 0.05 Hz</c>.</summary>
internal static class ToldText
{
    public static string? Of(DeviceReading? told) => told is null ? null : $"{told.Word} {told.InEntry}";

    /// <summary>Null when nothing was told, or an older or newer program wrote it otherwise.</summary>
    public static DeviceReading? Read(string? text) =>
        text?.Split(' ', 2) is [var word, var amount]
        && DeviceReading.Words.TryGetValue(word, out var sense)
        && Written.Read(amount, out var uncertainty) is null
            ? new(sense, uncertainty)
            : null;
}
