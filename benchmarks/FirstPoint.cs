using Microsoft.Playwright;

namespace Witnessmark.Benchmarks;

/// <summary>How a hand comes to a point of the demo's open job, in a browser that was never here.</summary>
internal static class FirstPoint
{
    private const string Person = "Ines Tallow";

    /// <summary>Says who it is and opens a point of the demo's job.</summary>
    public static async Task Open(IPage page, string path = "jobs/412/bench/chain-slack")
    {
        await page.GotoAsync(PublishedProgram.Address);
        await page.GetByRole(AriaRole.Button, new() { Name = Person, Exact = true }).ClickAsync();
        await page.WaitForSelectorAsync("main:not(.starting) h1");
        await page.EvaluateAsync("to => Blazor.navigateTo(to)", PublishedProgram.Address + path);
        await page.WaitForSelectorAsync(".bench .dock");
    }
}
