using System.Diagnostics;
using System.Net.Http.Headers;
using System.Text.Json;
using Witnessmark.Bench.Record;

namespace Witnessmark.Benchmarks;

/// <summary>
/// A full workshop at once: 200 devices bring 2,000 entries a second to the published server. Bars: 99 of 100 acknowledged within 250 ms, and the memory stays
/// as it is.
/// </summary>
internal static class LoadTimes
{
    private const int Devices = 200;
    internal const int InBatch = 10;
    private static readonly TimeSpan Beat = TimeSpan.FromSeconds(1);

    public static async Task Print(int seconds)
    {
        await using var program = await PublishedProgram.Start();
        using var http = new HttpClient(new SocketsHttpHandler { MaxConnectionsPerServer = Devices })
        {
            BaseAddress = new(PublishedProgram.Address),
        };
        var before = program.Megabytes;
        var memory = new List<double>();
        using var end = new CancellationTokenSource(TimeSpan.FromSeconds(seconds));
        var watching = Watch(program, memory, end.Token);
        var times = await Task.WhenAll(Enumerable.Range(0, Devices).Select(n => Bring(http, n, end.Token)));
        await watching;
        var all = times.SelectMany(t => t).Order().ToArray();
        Console.WriteLine($"{Devices} devices, {InBatch} entries each a second, for {seconds} s");
        Console.WriteLine(
            $"acknowledged entries a second {all.Length * InBatch / (double)seconds, 10:0}   bar {Devices * InBatch}"
        );
        Console.WriteLine(
            $"p50 ms {Share(all, 0.5), 10:0}   p99 ms {Share(all, 0.99), 8:0}   worst ms {all[^1], 8:0}   bar 250"
        );
        Console.WriteLine(
            $"memory MB: at the start {before:0}, in the first quarter {memory.Take(memory.Count / 4 + 1).Max():0}, in the last {memory.Skip(memory.Count * 3 / 4).Max():0}"
        );
    }

    private static async Task<List<double>> Bring(HttpClient http, int device, CancellationToken end)
    {
        await Task.Delay(device * 1000 / Devices, CancellationToken.None); // not all in the same instant
        List<double> times = [];
        var next = Stopwatch.GetTimestamp();
        foreach (var body in Bodies($"load-{device}", int.MaxValue / InBatch))
        {
            if (end.IsCancellationRequested)
                break;
            var from = Stopwatch.GetTimestamp();
            using (var answer = await Post(http, body))
                answer.EnsureSuccessStatusCode();
            times.Add(Stopwatch.GetElapsedTime(from).TotalMilliseconds);
            next += (long)(Beat.TotalSeconds * Stopwatch.Frequency);
            var left = Stopwatch.GetElapsedTime(Stopwatch.GetTimestamp(), next);
            if (left > TimeSpan.Zero)
                await Task.Delay(left, CancellationToken.None);
        }
        return times;
    }

    private static async Task Watch(PublishedProgram program, List<double> memory, CancellationToken end)
    {
        while (!end.IsCancellationRequested)
        {
            memory.Add(program.Megabytes);
            await Task.WhenAny(Task.Delay(500, end));
        }
    }

    internal static async Task<HttpResponseMessage> Post(HttpClient http, byte[] body)
    {
        using var content = new ByteArrayContent(body);
        content.Headers.ContentType = new MediaTypeHeaderValue("application/json");
        return await http.PostAsync("api/entries", content);
    }

    internal static IEnumerable<byte[]> Bodies(string device, int batches) =>
        Chain(device, batches * InBatch)
            .Chunk(InBatch)
            .Select(entries =>
                JsonSerializer.SerializeToUtf8Bytes(
                    new
                    {
                        protocol = 1,
                        device,
                        epoch = 1,
                        entries = entries.Select(EntryJson.Write),
                    }
                )
            );

    internal static IEnumerable<Entry> Chain(string device, int count)
    {
        string? previous = null;
        for (var seq = 1; seq <= count; seq++)
        {
            var entry = Entries.Sealed(
                new(
                    $"{device}-{seq}",
                    "harrow-lane",
                    $"{device}-{seq / 300}",
                    EntryKind.Note,
                    EntryBody.Note("chain-slack", $"note {seq}: 24.4 mm, half a turn"),
                    null,
                    null,
                    "2026-03-02T09:15:00Z",
                    "Ines Tallow"
                ),
                device,
                1,
                seq,
                previous
            );
            previous = entry.Hash;
            yield return entry;
        }
    }

    private static double Share(double[] sorted, double share) =>
        sorted[(int)Math.Min(sorted.Length - 1, share * sorted.Length)];
}
