namespace Witnessmark.Browser.Tests;

internal static partial class InstrumentJob
{
    /// <summary>Opens a point of it.</summary>
    public static async Task At(BenchHand hand, string point)
    {
        await hand.Open($"jobs/{Number}/bench/{point}");
        await hand.Page.Locator(".bench .dock").WaitForAsync();
    }
}
