using System.Diagnostics;
using Microsoft.Data.Sqlite;
using Witnessmark.Bench.Record;
using Witnessmark.Ledger;
using Witnessmark.Ledger.Sqlite;

namespace Witnessmark.Benchmarks;

/// <summary>
/// Batches one after the other, each on the disk before the next: by Microsoft.Data.Sqlite alone and by the ledger in turn, so that whatever else the computer
/// does meets both; then by the server over HTTP. Bar: the ledger takes twice as long as SQLite alone at most.
/// </summary>
internal static class AppendTimes
{
    private const int Batches = 500;
    private const int Before = 500; // until the code of each is read in and compiled as it is in a server that has run for a while

    public static async Task Print()
    {
        var folder = Directory.CreateTempSubdirectory("witnessmark-append-");
        try
        {
            using var sqlite = new SqliteAlone(Path.Combine(folder.FullName, "alone.db"));
            using var ledger = SqliteLedger.Open(folder.FullName, TimeProvider.System);
            var rows = Rows();
            var batches = Entries("ledger")
                .Select(c => new Batch("ledger", 1, [.. c.Select(EntryJson.Write)]))
                .ToList();
            var (alone, own) = (new double[Batches], new double[Batches]);
            for (var n = -Before; n < Batches; n++)
            {
                var (a, l) = (
                    Time(() => sqlite.Append(rows[n + Before])),
                    Time(() => ledger.Accept(batches[n + Before]))
                );
                if (n >= 0)
                    (alone[n], own[n]) = (a, l);
            }
            var over = await OverHttp();
            Console.WriteLine(
                $"{Batches} batches of {LoadTimes.InBatch}      entries/s   median ms   times as long, all   median   bar 2"
            );
            Line("SQLite alone, the same rows", alone, alone);
            Line("the ledger", own, alone);
            Line("the server, over HTTP", over, alone);
        }
        finally
        {
            SqliteConnection.ClearAllPools();
            folder.Delete(recursive: true);
        }
    }

    private static async Task<double[]> OverHttp()
    {
        await using var program = await PublishedProgram.Start();
        using var http = new HttpClient { BaseAddress = new(PublishedProgram.Address) };
        List<double> times = [];
        foreach (var body in LoadTimes.Bodies("append", Before + Batches).ToList())
        {
            var from = Stopwatch.GetTimestamp();
            using (var answer = await LoadTimes.Post(http, body))
                answer.EnsureSuccessStatusCode();
            times.Add(Stopwatch.GetElapsedTime(from).TotalMilliseconds);
        }
        return [.. times.Skip(Before)];
    }

    private static double Time(Action act)
    {
        var from = Stopwatch.GetTimestamp();
        act();
        return Stopwatch.GetElapsedTime(from).TotalMilliseconds;
    }

    private static List<Entry[]> Entries(string device) =>
        [.. LoadTimes.Chain(device, (Before + Batches) * LoadTimes.InBatch).Chunk(LoadTimes.InBatch)];

    private static List<KeptEntry[]> Rows() =>
        [
            .. Entries("alone")
                .SelectMany(c => c)
                .Select((e, i) => KeptEntry.Of(e, i + 1, e.Hash, DateTimeOffset.UnixEpoch))
                .Chunk(LoadTimes.InBatch),
        ];

    private static void Line(string what, double[] ms, double[] alone) =>
        Console.WriteLine(
            $"{what, -28} {Batches * LoadTimes.InBatch * 1000 / ms.Sum(), 8:0} {Median(ms), 11:0.00} {ms.Sum() / alone.Sum(), 20:0.00} {Median(ms) / Median(alone), 8:0.00}"
        );

    private static double Median(double[] ms) => ms.Order().ElementAt(ms.Length / 2);
}
