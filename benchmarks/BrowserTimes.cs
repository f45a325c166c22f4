using System.Text.Json;
using System.Text.Json.Nodes;
using Microsoft.Playwright;
using Witnessmark.Handbook.Quantities;
using Witnessmark.Handbook.Tests.Engine;

namespace Witnessmark.Benchmarks;

/// <summary>Calculations on the device: the published WebAssembly client in a headless Chromium, asked with JSON text.</summary>
internal static class BrowserTimes
{
    internal static string Chromium =>
        Environment.GetEnvironmentVariable("WITNESSMARK_CHROMIUM") ?? "/usr/bin/chromium";

    // In the page's own clock: the median of many calls after the first, which also reads the program in. A call too short for
    // the clock (0.1 ms steps) is repeated until it is not.
    private const string Measured = """
        ([name, given, runs, repeats]) => {
            const ask = () => DotNet.invokeMethod("Witnessmark.Client", "ask", name, given);
            const timed = (times) => {
                const from = performance.now();
                for (let i = 0; i < times; i++) ask();
                return (performance.now() - from) / times;
            };
            const first = timed(1);
            const rest = Array.from({ length: runs }, () => timed(repeats)).sort((a, b) => a - b);
            return JSON.stringify({ first, least: rest[0], median: rest[runs >> 1], worst: rest[runs - 1], reply: ask() });
        }
        """;

    public static async Task Print()
    {
        await using var program = await PublishedProgram.Start();
        using var playwright = await Playwright.CreateAsync();
        await using var browser = await playwright.Chromium.LaunchAsync(
            new() { ExecutablePath = Chromium, Args = ["--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage"] }
        );
        var page = await browser.NewPageAsync();
        page.SetDefaultTimeout(120_000);
        await page.GotoAsync(PublishedProgram.Address);
        await page.WaitForSelectorAsync("main:not(.starting)");
        Console.WriteLine($"{"", -18}  first ms   least ms   median ms   worst ms   bar ms   of the bar");
        await Line(page, "verdict", Verdict, 2, 50, 20);
        await Line(page, "chain-adjustment", Correction, 2, 50, 20);
        for (var seed = 1; seed <= 3; seed++)
            await Line(page, "valve-shims", Shims(seed), 2000, 5, 1);
        foreach (var order in OrdersOf16())
            await Line(page, "bench-order", order, 2000, 3, 1);
        await FirstVisit.Print(browser);
        await SlowDevice.Print(playwright, Chromium);
    }

    private static async Task Line(IPage page, string name, string given, double bar, int runs, int repeats)
    {
        var measured = JsonNode.Parse(
            await page.EvaluateAsync<string>(Measured, new object[] { name, given, runs, repeats })
        )!;
        var reply = JsonNode.Parse((string)measured["reply"]!)!;
        if (reply["wrong"] is { } wrong)
            throw new InvalidOperationException((string?)wrong);
        var (first, least, median, worst) = (Of("first"), Of("least"), Of("median"), Of("worst"));
        var proven = reply["proven"] is { } p ? $"   proven: {p}" : "";
        Console.WriteLine(
            $"{name, -18} {first, 9:0.00} {least, 10:0.000} {median, 11:0.000} {worst, 10:0.000} {bar, 8:0} {median / bar, 12:0.000}{proven}"
        );
        double Of(string time) => (double)measured[time]!;
    }

    private const string Verdict =
        """{"value":"5.1 mm","standardUncertainty":"0.1 mm","limit":{"min":"4.5 mm","max":"5.5 mm"}}""";

    private const string Correction =
        """{"trials":[{"turns":0,"slack":"50 mm"},{"turns":2,"slack":"20 mm"}],"target":"22 mm","slackUncertainty":"1 mm"}""";

    private static string Shims(int seed)
    {
        var engine = RandomEngines.Of(seed, 16, 60);
        var valves = engine.Valves.Select(v =>
        {
            var valve = new JsonObject
            {
                ["id"] = v.Id,
                ["shim"] = Text(v.Shim),
                ["clearance"] = Text(v.Clearance),
                ["min"] = Text(v.Min),
                ["max"] = Text(v.Max),
            };
            if (v.Target is { } target)
                valve["target"] = Text(target);
            return (JsonNode)valve;
        });
        return new JsonObject
        {
            ["valves"] = new JsonArray([.. valves]),
            ["stock"] = new JsonArray([.. engine.Stock.Select(s => (JsonNode)Text(s))]),
            ["buyable"] = new JsonObject
            {
                ["from"] = Text(engine.Buyable.From),
                ["to"] = Text(engine.Buyable.To),
                ["step"] = Text(engine.Buyable.Step),
            },
        }.ToJsonString();
    }

    private static string Text(Length length) => FormattableString.Invariant($"{length.Millimetres:0.###} mm");

    // The jobs of 16 tasks among the check cases.
    private static IEnumerable<string> OrdersOf16()
    {
        using var cases = JsonDocument.Parse(File.ReadAllText("tests/Handbook.Tests/Cases/bench-order.json"));
        foreach (var set in cases.RootElement.EnumerateArray())
        foreach (var check in set.GetProperty("cases").EnumerateArray())
            if (check.GetProperty("given").GetProperty("tasks").GetArrayLength() == 16)
                yield return check.GetProperty("given").GetRawText();
    }
}
