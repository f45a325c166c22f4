using System.Diagnostics;
using System.Globalization;
using Microsoft.Data.Sqlite;
using Witnessmark.Bench.Record;
using Witnessmark.Ledger;
using Witnessmark.Ledger.Sqlite;

namespace Witnessmark.Benchmarks;

/// <summary>
/// A shop's ledger as the years go by: opening a job and taking a batch in, in a ledger of ten thousand entries and in one of ten million. Bar: half as long
/// again at most. Each size is asked in turn with the smallest, so that whatever else the computer does meets both.
/// </summary>
internal static class GrowthTimes
{
    private const int InJob = 300;
    private const int AtOnce = 10; // jobs whose entries come in mixed
    private const int Asked = 200;
    private const long Smallest = 10_000;
    private static readonly long[] Sizes = [100_000, 1_000_000, 10_000_000];

    public static void Print()
    {
        var (first, grown) = (Folder(), Folder());
        try
        {
            using var small = Open(first);
            using var large = Open(grown);
            Fill(first.FullName, 0, Smallest);
            Console.WriteLine($"                          of {Smallest} ms     here ms   times   bar 1.5");
            var there = 0L;
            foreach (var size in Sizes)
            {
                Fill(grown.FullName, there, size);
                there = size;
                Console.WriteLine($"{size} entries, {Megabytes(grown):0} MB");
                Line("open a job", InTurn(Opening(small, Smallest), Opening(large, size)));
                Line("take ten in", InTurn(Taking(small, size), Taking(large, size)));
            }
        }
        finally
        {
            SqliteConnection.ClearAllPools();
            first.Delete(recursive: true);
            grown.Delete(recursive: true);
        }
    }

    private static DirectoryInfo Folder() => Directory.CreateTempSubdirectory("witnessmark-growth-");

    private static ShopLedger Open(DirectoryInfo folder) => SqliteLedger.Open(folder.FullName, TimeProvider.System);

    private static Action<int> Opening(ShopLedger ledger, long size)
    {
        var chance = new Random(412);
        var jobs = size / InJob / AtOnce * AtOnce;
        return _ =>
        {
            var job = ledger.OfJob(Job(chance.NextInt64(jobs)));
            if (job.Count != InJob)
                throw new InvalidOperationException($"A job of {job.Count} entries.");
        };
    }

    private static Action<int> Taking(ShopLedger ledger, long size)
    {
        var batches = LoadTimes
            .Chain($"new-{size}", Asked * 10)
            .Select(EntryJson.Write)
            .Chunk(10)
            .Select(entries => new Batch($"new-{size}", 1, entries))
            .ToList();
        return n => ledger.Accept(batches[n]);
    }

    private static (double Small, double Large) InTurn(Action<int> small, Action<int> large)
    {
        var (a, b) = (new double[Asked], new double[Asked]);
        for (var n = 0; n < Asked; n++)
            (a[n], b[n]) = (Time(small, n), Time(large, n));
        return (a.Order().ElementAt(Asked / 2), b.Order().ElementAt(Asked / 2));
    }

    private static double Time(Action<int> act, int n)
    {
        var from = Stopwatch.GetTimestamp();
        act(n);
        return Stopwatch.GetElapsedTime(from).TotalMilliseconds;
    }

    private static void Line(string what, (double Small, double Large) ms) =>
        Console.WriteLine($"  {what, -20} {ms.Small, 15:0.00} {ms.Large, 11:0.00} {ms.Large / ms.Small, 7:0.00}");

    private static string Job(long number) => $"job-{number:00000000}";

    private static double Megabytes(DirectoryInfo folder) => folder.EnumerateFiles().Sum(f => f.Length) / 1e6;

    /// <summary>Rows as the ledger writes them, but straight into the file: ten million through the ledger would take hours.</summary>
    private static void Fill(string folder, long from, long to)
    {
        using var connection = new SqliteConnection(
            $"Data Source={Path.Combine(folder, SqliteLedger.FileName)};Pooling=False"
        );
        connection.Open();
        using var insert = connection.CreateCommand();
        insert.CommandText = "PRAGMA synchronous=OFF; PRAGMA cache_size=-2000000";
        insert.ExecuteNonQuery();
        insert.CommandText = "SELECT COALESCE(MAX(\"Order\"), 0) FROM entries";
        var order = (long)insert.ExecuteScalar()!;
        using var transaction = connection.BeginTransaction();
        insert.Transaction = transaction;
        insert.CommandText =
            "INSERT INTO entries (\"Order\", \"Id\", \"Shop\", \"Job\", \"Device\", \"Epoch\", \"Seq\", \"Kind\", \"Body\", \"At\", \"By\", \"DevicePrevious\", \"Hash\", \"JobHash\", \"Received\") "
            + "VALUES ($order, $id, 'harrow-lane', $job, $device, 1, $seq, 'note', $body, '2026-03-02T09:15:00Z', 'Ines Tallow', $hash, $hash, $hash, '2026-03-02T09:15:00.000Z')";
        string[] names = ["$order", "$id", "$job", "$device", "$seq", "$body", "$hash"];
        foreach (var name in names)
            insert.Parameters.Add(new SqliteParameter { ParameterName = name });
        for (var n = from; n < to; n++)
        {
            object[] values =
            [
                ++order,
                $"0193{n:x28}",
                Job(n / (InJob * AtOnce) * AtOnce + n % AtOnce),
                $"device-{n % 7}",
                n / 7 + 1,
                $$"""{"point":"chain-slack","text":"note {{n.ToString(CultureInfo.InvariantCulture)}}: 24.4 mm, half a turn"}""",
                $"{n:x64}",
            ];
            for (var i = 0; i < values.Length; i++)
                insert.Parameters[i].Value = values[i];
            insert.ExecuteNonQuery();
        }
        transaction.Commit();
    }
}
