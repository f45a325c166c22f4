using System.Net.Http.Json;
using System.Text.Json.Nodes;
using Witnessmark.Bench.Record;

namespace Witnessmark.Tests.Serve;

public sealed class DayEndpointTests : IDisposable
{
    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task The_day_is_planned_and_planned_anew_when_something_was_written()
    {
        using var shop = RunningShop.Serve(folder.Path);
        var first = await shop.Client.GetStringAsync("/api/day");
        Assert.Equal("412", (string?)Assert.Single(JsonNode.Parse(first)!["jobs"]!.AsArray())!["job"]);
        Assert.Equal(0, (int)JsonNode.Parse(first)!["latenessMinutes"]!);
        Assert.Equal(first, await shop.Client.GetStringAsync("/api/day"));
        var promise = Entries.Sealed(
            new(
                "bench-1",
                "harrow-lane",
                "412",
                EntryKind.Promise,
                EntryBody.Promise(new(2020, 1, 2, 16, 0, 0)),
                null,
                null,
                "2026-11-25T09:00:00+00:00",
                "Ines Tallow"
            ),
            "bench",
            1,
            1,
            null
        );
        using var taken = await shop.Post(promise);
        Assert.True(taken.IsSuccessStatusCode);
        var late = JsonNode.Parse(await shop.Client.GetStringAsync("/api/day"))!;
        Assert.True((int)late["latenessMinutes"]! > 0);
        Assert.Contains("which has passed", (string?)late["jobs"]![0]!["because"]);
    }

    [Fact]
    public async Task It_says_how_long_each_step_is_and_whose_kit_lacks_what_as_soon_as_the_shelf_says_so()
    {
        using var shop = RunningShop.Serve(folder.Path);
        var before = JsonNode.Parse(await shop.Client.GetStringAsync("/api/day"))!;
        var job = before["jobs"]![0]!;
        Assert.Equal(job["starts"]!.AsArray().Count, job["steps"]!.AsArray().Count);
        Assert.All(job["steps"]!.AsArray(), s => Assert.True((int)s!["hands"]! > 0 && (int)s["waits"]! >= 0));
        Assert.DoesNotContain("Order it", before["notWhole"]!.ToJsonString());
        // a shelf on which nothing but paint lies
        using var came = await shop.Client.PostAsJsonAsync(
            "/api/stock/moves",
            new
            {
                id = "paint-1",
                kind = "receive",
                item = "stripe-paint",
                amount = "1",
                by = "Ines Tallow",
            }
        );
        Assert.True(came.IsSuccessStatusCode, await came.Content.ReadAsStringAsync());
        var lacks = JsonNode.Parse(await shop.Client.GetStringAsync("/api/day"))!["notWhole"]!;
        Assert.Equal("412", (string?)lacks[0]!["job"]);
        Assert.Contains("Oil filter Fell 640", (string?)lacks[0]!["because"]);
        // a part each, for whoever lists them
        Assert.Single(
            lacks[0]!["lacks"]!.AsArray(),
            l => ((string)l!).StartsWith("Oil filter Fell 640: ", StringComparison.Ordinal)
        );
    }

    [Fact]
    public async Task Without_opening_hours_it_says_where_they_are_written()
    {
        using (RunningShop.Serve(folder.Path)) { }
        var file = Path.Combine(folder.Path, "shop.toml");
        var text = File.ReadAllText(file);
        var (from, to) = (text.IndexOf("[hours]"), text.IndexOf("# --- instruments"));
        File.WriteAllText(file, text.Remove(from, to - from));
        using var shop = RunningShop.Serve(folder.Path);
        using var answer = await shop.Client.GetAsync("/api/day");
        Assert.Equal(System.Net.HttpStatusCode.Conflict, answer.StatusCode);
        Assert.Contains("[hours] in shop.toml", await answer.Content.ReadAsStringAsync());
    }
}
