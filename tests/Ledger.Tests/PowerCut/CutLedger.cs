using System.Data.Common;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Diagnostics;
using Witnessmark.Bench.Record;
using Witnessmark.Ledger.Sqlite;

namespace Witnessmark.Ledger.Tests.PowerCut;

/// <summary>A ledger on a watched disk whose power fails at moments drawn by chance; what is found afterwards is opened and compared with what was acknowledged.</summary>
internal sealed class CutLedger : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("witnessmark-cut-").FullName;
    private readonly Random chance;
    private readonly Disk disk = new();
    private readonly ShopLedger ledger;
    private readonly List<string> acknowledged = [];
    private readonly List<(string[] Acknowledged, IReadOnlyDictionary<string, byte[]> Files)> cuts = [];
    private int untilCut;

    /// <param name="seed">Of the moments, and of what survives them.</param>
    /// <param name="synchronous">SQLite's word for how it waits for the disk; null: as the shop does.</param>
    public CutLedger(int seed, string? synchronous = null)
    {
        chance = new(seed);
        WatchedFiles.Register();
        var id = SqliteLedger.Open(folder, TimeProvider.System).Id; // the tables, by the usual way
        SqliteConnection.ClearAllPools();
        WatchedFiles.Disk = disk;
        var options = new DbContextOptionsBuilder<SqliteLedgerContext>()
            .UseSqlite($"Data Source={In(folder)};Vfs={WatchedFiles.Name};Mode=ReadWrite")
            .AddInterceptors(new DurableConnection(), new Settings(synchronous))
            .Options;
        ledger = new(() => new SqliteLedgerContext(options), TimeProvider.System, id);
        disk.Happened = Tick;
        untilCut = chance.Next(1, 15);
    }

    /// <summary>How often the power failed.</summary>
    public int Cuts => cuts.Count;

    /// <summary>Sends a device's entries in batches of any size; at the end the power fails once more.</summary>
    public void Take(IReadOnlyList<Entry> chain)
    {
        for (var at = 0; at < chain.Count; )
        {
            var batch = chain.Skip(at).Take(chance.Next(1, 12)).ToList();
            var receipt = ledger.Accept(new(batch[0].Device, 1, [.. batch.Select(EntryJson.Write)]));
            at += batch.Count;
            Assert.Equal(at, receipt.UpTo);
            acknowledged.AddRange(batch.Select(e => e.Id));
            if (chance.Next(5) == 0)
                Cut(); // nothing was written since: what was said is all that may be missing
        }
        Cut();
        disk.Happened = null;
    }

    /// <summary>What was acknowledged and not found after a cut, or a chain that does not verify; empty when all is well.</summary>
    public IReadOnlyList<string> Faults()
    {
        WatchedFiles.Disk = null;
        ledger.Dispose();
        SqliteConnection.ClearAllPools();
        return
        [
            .. cuts.SelectMany(
                (cut, number) => Faults(cut.Acknowledged, cut.Files).Select(f => $"cut {number + 1}: {f}")
            ),
        ];
    }

    public void Dispose()
    {
        WatchedFiles.Disk = null;
        ledger.Dispose();
        SqliteConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
    }

    private void Tick()
    {
        if (--untilCut > 0)
            return;
        untilCut = chance.Next(1, 25);
        Cut();
    }

    private void Cut() => cuts.Add(([.. acknowledged], disk.AfterCut(chance)));

    internal static List<string> Faults(string[] acknowledged, IReadOnlyDictionary<string, byte[]> files)
    {
        var after = Directory.CreateTempSubdirectory("witnessmark-after-").FullName;
        try
        {
            foreach (var (path, bytes) in files)
                File.WriteAllBytes(Path.Combine(after, Path.GetFileName(path)), bytes);
            using var opened = SqliteLedger.Open(after, TimeProvider.System);
            var found = opened.After(0).Entries.Select(e => e.Entry.Id).ToList();
            List<string> faults = [.. SqliteLedger.Check(after).Faults];
            if (acknowledged.Except(found).ToList() is { Count: > 0 } lost)
                faults.Add($"{lost.Count} of {acknowledged.Length} acknowledged entries are gone, the first {lost[0]}");
            if (found.Count != found.Distinct().Count())
                faults.Add("an entry is there twice");
            return faults;
        }
        catch (Exception torn) when (torn is LedgerUnavailable or InvalidOperationException)
        {
            return [torn.Message];
        }
        finally
        {
            SqliteConnection.ClearAllPools();
            Directory.Delete(after, recursive: true);
        }
    }

    private static string In(string folder) => Path.Combine(folder, SqliteLedger.FileName);

    /// <summary>Small checkpoints, so that the power fails in some of them too.</summary>
    internal sealed class Settings(string? synchronous) : DbConnectionInterceptor
    {
        public override void ConnectionOpened(DbConnection connection, ConnectionEndEventData eventData)
        {
            using var command = connection.CreateCommand();
            command.CommandText = "PRAGMA wal_autocheckpoint = 40;";
            if (synchronous is not null)
                command.CommandText += $"PRAGMA synchronous = {synchronous};";
            command.ExecuteNonQuery();
        }
    }
}
