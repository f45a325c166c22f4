namespace Witnessmark.Client.Device;

/// <summary>A newer version of the program took this device's store over in another tab: what was to be written is not, and whoever wrote it is told.</summary>
internal sealed class Superseded() : Exception(DeviceWords.Superseded);
