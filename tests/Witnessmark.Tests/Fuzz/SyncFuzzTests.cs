using System.Globalization;
using System.Net.Http.Headers;
using System.Text.Json;
using Witnessmark.Bench.Record;
using Witnessmark.Ledger.Sqlite;
using Witnessmark.Tests.Serve;

namespace Witnessmark.Tests.Fuzz;

/// <summary>Batches that are spoilt on the way, at the real server. Source: own; what is asked is that nothing falls over and nothing is kept half.</summary>
public sealed class SyncFuzzTests : IDisposable
{
    private const int Seed = 20261129;

    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task Whatever_comes_is_taken_set_aside_or_refused_and_every_chain_still_verifies()
    {
        var ends = new SortedDictionary<string, int>(StringComparer.Ordinal);
        using (var shop = RunningShop.Serve(folder.Path))
        {
            var spoil = new Mutations(Seed);
            for (var i = 0; i < Tries.Of(1_500); i++)
            {
                using var body = new ByteArrayContent(spoil.Of(Batch($"fuzz-{i % 40}", i)));
                body.Headers.ContentType = new MediaTypeHeaderValue("application/json");
                using var answer = await shop.Client.PostAsync(
                    "/api/entries",
                    body,
                    TestContext.Current.CancellationToken
                );
                var status = (int)answer.StatusCode;
                Assert.True(status is 200 or 400 or 413, $"try {i}: {status}");
                var key = status.ToString(CultureInfo.InvariantCulture);
                ends[key] = ends.GetValueOrDefault(key) + 1;
            }
            Assert.True((await shop.Get("/api/health")).GetProperty("ok").GetBoolean());
            Assert.NotEmpty(await shop.Ids());
        }
        Tries.Tell("sync", Seed, ends);
        Assert.True(
            ends["200"] > 50 && ends["400"] > 50,
            "Hardly anything was let in, or hardly anything refused: it proves little."
        );
        var found = SqliteLedger.Check(folder.Path);
        Assert.Empty(found.Faults);
        Assert.True(found.SetAside > 0, "Nothing was set aside: it proves little.");
    }

    /// <summary>Three notes of one device, as it sends them.</summary>
    private static byte[] Batch(string device, int from)
    {
        var entries = new List<Entry>();
        for (var seq = 1; seq <= 3; seq++)
            entries.Add(Notes.Next($"{device}-{from}", seq, entries.LastOrDefault()?.Hash));
        return JsonSerializer.SerializeToUtf8Bytes(
            new
            {
                protocol = 1,
                device = $"{device}-{from}",
                epoch = 1,
                entries = entries.Select(EntryJson.Write),
            }
        );
    }
}
