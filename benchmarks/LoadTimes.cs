using System.Diagnostics;
using System.Net.Http.Headers;
using System.Text.Json;
using Microsoft.Data.Sqlite;
using Witnessmark.Bench.Record;

namespace Witnessmark.Benchmarks;

/// <summary>
/// A full workshop at once: 200 devices bring 2,000 entries a second to the published server. Bars: 99 of 100 acknowledged within 250 ms, and the memory stays
/// as it is. Beside it: the same rows into SQLite alone, as durable, in batches of the same size.
/// </summary>
internal static class LoadTimes
{
    private const int Devices = 200;
    private const int InBatch = 10;
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

    /// <summary>How fast one after the other goes without waiting for a beat, beside SQLite alone.</summary>
    public static async Task PrintAppend(int batches)
    {
        await using var program = await PublishedProgram.Start();
        using var http = new HttpClient { BaseAddress = new(PublishedProgram.Address) };
        var bodies = Bodies("append", batches).ToList();
        var ledger = Ledger(batches);
        var alone = Alone(batches);
        using (await Post(http, Bodies("warm", 1).Single())) { }
        var watch = Stopwatch.StartNew();
        foreach (var body in bodies)
            using (var answer = await Post(http, body))
                answer.EnsureSuccessStatusCode();
        var over = watch.Elapsed.TotalSeconds;
        var entries = batches * InBatch;
        Console.WriteLine($"{batches} batches of {InBatch}, one after the other, each on the disk before the next");
        Console.WriteLine($"SQLite alone, the same rows      {entries / alone, 9:0} entries/s");
        Console.WriteLine(
            $"the ledger                       {entries / ledger, 9:0} entries/s   {ledger / alone, 5:0.00} times as long   bar 2"
        );
        Console.WriteLine(
            $"the server, over HTTP            {entries / over, 9:0} entries/s   {over / alone, 5:0.00} times as long"
        );
    }

    private static double Ledger(int batches)
    {
        var folder = Directory.CreateTempSubdirectory("witnessmark-append-");
        try
        {
            var ledger = Witnessmark.Ledger.Sqlite.SqliteLedger.Open(folder.FullName, TimeProvider.System);
            var all = Chain("ledger", batches * InBatch)
                .Select(EntryJson.Write)
                .Chunk(InBatch)
                .Select(c => new Witnessmark.Ledger.Batch("ledger", 1, c))
                .ToList();
            var watch = Stopwatch.StartNew();
            foreach (var batch in all)
                ledger.Accept(batch);
            return watch.Elapsed.TotalSeconds;
        }
        finally
        {
            SqliteConnection.ClearAllPools();
            folder.Delete(recursive: true);
        }
    }

    /// <summary>Microsoft.Data.Sqlite with one prepared statement, write-ahead log, FULL, and the same indices.</summary>
    private static double Alone(int batches)
    {
        var folder = Directory.CreateTempSubdirectory("witnessmark-alone-");
        try
        {
            var rows = Chain("alone", batches * InBatch)
                .Select((e, i) => Witnessmark.Ledger.KeptEntry.Of(e, i + 1, e.Hash, DateTimeOffset.UnixEpoch))
                .Chunk(InBatch)
                .ToList();
            using var connection = new SqliteConnection($"Data Source={Path.Combine(folder.FullName, "alone.db")}");
            connection.Open();
            using var insert = connection.CreateCommand();
            insert.CommandText =
                "PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; CREATE TABLE entries (o INTEGER PRIMARY KEY, id TEXT, shop TEXT, job TEXT, device TEXT, epoch INTEGER, seq INTEGER, kind TEXT, body TEXT, at TEXT, by TEXT, previous TEXT, hash TEXT, jobhash TEXT, received TEXT); CREATE UNIQUE INDEX a ON entries (id); CREATE UNIQUE INDEX b ON entries (device, epoch, seq); CREATE INDEX c ON entries (job, o)";
            insert.ExecuteNonQuery();
            insert.CommandText =
                "INSERT INTO entries VALUES ($0, $1, $2, $3, $4, $5, $6, $7, $8, $9, $10, $11, $12, $13, $14)";
            for (var i = 0; i < 15; i++)
                insert.Parameters.Add(new SqliteParameter { ParameterName = $"${i}" });
            var watch = Stopwatch.StartNew();
            foreach (var batch in rows)
            {
                using var transaction = connection.BeginTransaction();
                insert.Transaction = transaction;
                foreach (var row in batch)
                {
                    object?[] values =
                    [
                        row.Order,
                        row.Id,
                        row.Shop,
                        row.Job,
                        row.Device,
                        row.Epoch,
                        row.Seq,
                        row.Kind,
                        row.Body,
                        row.At,
                        row.By,
                        row.DevicePrevious,
                        row.Hash,
                        row.JobHash,
                        row.Received,
                    ];
                    for (var i = 0; i < values.Length; i++)
                        insert.Parameters[i].Value = values[i] ?? DBNull.Value;
                    insert.ExecuteNonQuery();
                }
                transaction.Commit();
            }
            return watch.Elapsed.TotalSeconds;
        }
        finally
        {
            SqliteConnection.ClearAllPools();
            folder.Delete(recursive: true);
        }
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

    private static async Task<HttpResponseMessage> Post(HttpClient http, byte[] body)
    {
        using var content = new ByteArrayContent(body);
        content.Headers.ContentType = new MediaTypeHeaderValue("application/json");
        return await http.PostAsync("api/entries", content);
    }

    private static IEnumerable<byte[]> Bodies(string device, int batches) =>
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
