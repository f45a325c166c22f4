namespace Witnessmark.Client.Device;

/// <summary>How long what nobody waits for stays behind a tap, so that the tap is answered on the screen first.</summary>
/// <remarks>Own measurement, benchmarks/README.md: a reading has its verdict after about as long on a device four times as slow as the one measured on.</remarks>
internal static class Breath
{
    private static readonly TimeSpan Length = TimeSpan.FromMilliseconds(150);

    public static Task Take() => Task.Delay(Length);
}
