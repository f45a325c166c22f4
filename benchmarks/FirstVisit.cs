using Microsoft.Playwright;

namespace Witnessmark.Benchmarks;

/// <summary>
/// What comes over the line until the first point is open, in a browser that was never here: the encoded bodies of all responses to the page. The bar is
/// 3.0 MB.
/// </summary>
internal static class FirstVisit
{
    private const double Bar = 3.0;
    private const int Largest = 8;

    public static async Task Print(IBrowser browser)
    {
        await using var context = await browser.NewContextAsync();
        var page = await context.NewPageAsync();
        page.SetDefaultTimeout(120_000);
        List<IRequest> asked = [];
        page.RequestFinished += (_, request) => asked.Add(request);
        await FirstPoint.Open(page);
        var came = new List<(string Path, int Bytes)>();
        foreach (var request in asked)
            came.Add((new Uri(request.Url).AbsolutePath, (await request.SizesAsync()).ResponseBodySize));
        var all = came.Sum(c => c.Bytes) / 1e6;
        Console.WriteLine();
        Console.WriteLine($"first visit, over the line: {all:0.00} MB in {came.Count} responses   bar {Bar:0.0} MB");
        foreach (var (path, bytes) in came.OrderByDescending(c => c.Bytes).Take(Largest))
            Console.WriteLine($"  {bytes / 1e3, 8:0} kB  {path}");
    }
}
