using System.Diagnostics;
using System.Globalization;
using Microsoft.Data.Sqlite;
using Witnessmark.Bench.Record;
using Witnessmark.Ledger;
using Witnessmark.Ledger.Sqlite;

namespace Witnessmark.Benchmarks;

/// <summary>
/// A shop's ledger as the years go by: opening a job and taking a batch in, in a ledger of ten thousand entries and in one of ten million. Bar: half as long
/// again at most. Beside each size stands the first.
/// </summary>
internal static class GrowthTimes
{
    private const int InJob = 300;
    private const int AtOnce = 10; // jobs whose entries come in mixed
    private const int Asked = 200;
    private static readonly long[] Sizes = [10_000, 100_000, 1_000_000, 10_000_000];

    public static void Print()
    {
        var folder = Directory.CreateTempSubdirectory("witnessmark-growth-");
        try
        {
            var ledger = SqliteLedger.Open(folder.FullName, TimeProvider.System);
            var (there, first) = (0L, (Open: 0.0, Take: 0.0));
            Console.WriteLine(" entries      MB   open a job ms   times   take ten ms   times   bar 1.5");
            foreach (var size in Sizes)
            {
                Fill(folder.FullName, there, size);
                there = size;
                var (open, take) = (Opening(ledger, size), Taking(ledger, size));
                first = first.Open == 0 ? (open, take) : first;
                Console.WriteLine(
                    $"{size, 8} {Megabytes(folder), 7:0} {open, 15:0.00} {open / first.Open, 7:0.00} {take, 13:0.00} {take / first.Take, 7:0.00}"
                );
            }
        }
        finally
        {
            SqliteConnection.ClearAllPools();
            folder.Delete(recursive: true);
        }
    }

    private static double Opening(ShopLedger ledger, long size)
    {
        var chance = new Random(412);
        var jobs = size / InJob;
        return Median(
            Asked,
            _ =>
            {
                var job = ledger.OfJob(Job(chance.NextInt64(jobs / AtOnce * AtOnce)));
                if (job.Count != InJob)
                    throw new InvalidOperationException($"A job of {job.Count} entries.");
            }
        );
    }

    private static double Taking(ShopLedger ledger, long size)
    {
        var batches = LoadTimes
            .Chain($"new-{size}", Asked * 10)
            .Select(EntryJson.Write)
            .Chunk(10)
            .Select(entries => new Batch($"new-{size}", 1, entries))
            .ToList();
        return Median(Asked, n => ledger.Accept(batches[n]));
    }

    private static double Median(int times, Action<int> act)
    {
        double[] all =
        [
            .. Enumerable
                .Range(0, times)
                .Select(n =>
                {
                    var from = Stopwatch.GetTimestamp();
                    act(n);
                    return Stopwatch.GetElapsedTime(from).TotalMilliseconds;
                })
                .Order(),
        ];
        return all[times / 2];
    }

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
