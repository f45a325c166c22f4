using System.Net;
using System.Text.Json;
using Witnessmark.Bench.Machines;
using Witnessmark.Bench.Record;

namespace Witnessmark.Tests.Serve;

public sealed class FleetEndpointTests : IDisposable
{
    private const string Path = "/api/machines/fell-640-0412/points/tyre-rear-tread/fleet";
    private readonly TempFolder folder = new();
    private readonly List<Entry> entries = [];

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task Three_other_machines_of_the_sheet_tell_how_fast_a_point_wears()
    {
        using var shop = RunningShop.Serve(folder.Path);
        Wears("one", "fell-640", 6.0, 4.0);
        Wears("two", "fell-640", 6.0, 3.6);
        Wears("else", "other-sheet", 6.0, 2.0);
        await Post(shop);
        var few = await shop.Get(Path);
        Assert.Equal("fell-640", few.GetProperty("sheet").GetString());
        Assert.Equal(2, few.GetProperty("machines").GetInt32());
        Assert.Equal(JsonValueKind.Null, few.GetProperty("rate").ValueKind);
        Assert.Equal(JsonValueKind.Null, few.GetProperty("deviation").ValueKind);

        Wears("three", "fell-640", 6.0, 3.2);
        await Post(shop);
        var fleet = await shop.Get(Path);
        Assert.Equal(3, fleet.GetProperty("machines").GetInt32());
        Assert.Equal(-0.6, fleet.GetProperty("rate").GetDouble(), 9); // mm lost in 4000 km: 2.0, 2.4 and 2.8
        // s = 0.1; t = 2.920 with two degrees of freedom and z = 1.645: NIST/SEMATECH e-Handbook 1.3.6.7
        Assert.Equal(0.1 * Math.Sqrt(4.0 / 3) * 2.920 / 1.645, fleet.GetProperty("deviation").GetDouble(), 1e-4);

        // of its own wear a machine is told nothing
        var own = await shop.Get("/api/machines/three/points/tyre-rear-tread/fleet");
        Assert.Equal(2, own.GetProperty("machines").GetInt32());
    }

    [Theory]
    [InlineData("/api/machines/fell-640-0412/points/nowhere/fleet", "no point \\\"nowhere\\\"")]
    [InlineData("/api/machines/nobody/points/tyre-rear-tread/fleet", "no visit of a machine \\\"nobody\\\"")]
    public async Task What_is_not_there_is_said(string path, string says)
    {
        using var shop = RunningShop.Serve(folder.Path);
        using var answer = await shop.Client.GetAsync(path);
        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
        Assert.Contains(says, await answer.Content.ReadAsStringAsync());
    }

    private async Task Post(RunningShop shop)
    {
        using var taken = await shop.Post(entries);
        Assert.True(taken.IsSuccessStatusCode);
    }

    /// <summary>Two visits 4000 km apart.</summary>
    private void Wears(string machine, string sheet, double before, double after)
    {
        foreach (var (visit, km, mm) in new[] { (1, 1000, before), (2, 5000, after) })
        {
            var job = $"{machine}-{visit}";
            var known = new Machine(machine, "Fell 640", "", 2024, sheet, null, null, null, "Tarnmoor");
            Add(
                job,
                EntryKind.Arrival,
                EntryBody.Arrival(machine, sheet, 4, "handover", [new("distance", "each visit")], known: known)
            );
            Add(job, EntryKind.Reading, EntryBody.Reading("distance", [$"{km} km"], null, "odometer"));
            var raw = FormattableString.Invariant($"{mm:0.0} mm");
            Add(job, EntryKind.Reading, EntryBody.Reading("tyre-rear-tread", [raw, raw, raw], null, "tread-gauge"));
        }
    }

    private void Add(string job, string kind, JsonElement body)
    {
        var seq = entries.Count + 1;
        var draft = new EntryDraft(
            $"e{seq}",
            "harrow-lane",
            job,
            kind,
            body,
            null,
            null,
            $"2026-01-{seq:00}T09:00:00+00:00",
            "Ines Tallow"
        );
        entries.Add(Entries.Sealed(draft, "bench", 1, seq, entries.LastOrDefault()?.Hash));
    }
}
