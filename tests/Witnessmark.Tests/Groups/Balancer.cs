using System.Net.Http.Json;
using Witnessmark.Bench.Record;

namespace Witnessmark.Tests.Groups;

/// <summary>Gives each request to the next server. What one does not answer, the sender sends again, as a device does.</summary>
internal sealed class Balancer(IReadOnlyList<Uri> servers) : IDisposable
{
    private readonly HttpClient client = new() { Timeout = TimeSpan.FromSeconds(10) };
    private int next;

    /// <summary>What the shop said; null when it was no yes.</summary>
    public async Task<string?> Post(string device, IEnumerable<Entry> entries)
    {
        var server = servers[(Interlocked.Increment(ref next) & int.MaxValue) % servers.Count];
        var batch = new
        {
            protocol = 1,
            device,
            epoch = 1,
            entries = entries.Select(EntryJson.Write),
        };
        try
        {
            using var answer = await client.PostAsJsonAsync(new Uri(server, "/api/entries"), batch);
            var said = await answer.Content.ReadAsStringAsync();
            return answer.IsSuccessStatusCode ? said
                : (int)answer.StatusCode >= 500 ? null
                : throw new InvalidOperationException($"{answer.StatusCode}: {said}");
        }
        catch (Exception gone) when (gone is HttpRequestException or IOException or OperationCanceledException)
        {
            return null;
        }
    }

    public void Dispose() => client.Dispose();
}
