using Witnessmark.Bench.Judging;

namespace Witnessmark.Client.Bench;

/// <summary>One box of a reading.</summary>
/// <param name="Label">What is read here: <c>Lowest mark</c>.</param>
/// <param name="Place">As it is recorded, or null where there is one place only.</param>
public sealed record Slot(string Label, string? Place)
{
    /// <summary>As typed, or as the device told it.</summary>
    public string Text
    {
        get;
        set => (field, Told) = (value, null); // what a hand changed is no longer what the device told
    } = "";

    /// <summary>With which of its senses the device told it and how far it may be off; null where it was typed.</summary>
    public DeviceReading? Told { get; private set; }

    /// <summary>Takes over what the device told.</summary>
    public void Tell(string text, DeviceReading told) => (Text, Told) = (text, told);
}
