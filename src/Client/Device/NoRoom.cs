namespace Witnessmark.Client.Device;

/// <summary>The browser gives this device's store no more room: what was to be written is not, and whoever wrote it is told.</summary>
internal sealed class NoRoom() : Exception(DeviceWords.NoRoom);
