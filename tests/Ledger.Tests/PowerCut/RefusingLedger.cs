using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Witnessmark.Bench.Record;
using Witnessmark.Ledger.Sqlite;

namespace Witnessmark.Ledger.Tests.PowerCut;

/// <summary>A ledger whose disk refuses one write, or all from one on, until there is room again.</summary>
internal sealed class RefusingLedger : IDisposable
{
    private const int InBatch = 4;
    private readonly string folder = Directory.CreateTempSubdirectory("witnessmark-full-").FullName;
    private readonly Disk disk = new();
    private readonly ShopLedger ledger;
    private readonly HashSet<string> acknowledged = [];
    private readonly List<string> said = [];
    private readonly List<(string[] Acknowledged, IReadOnlyDictionary<string, byte[]> Files)> cuts = [];

    /// <param name="empty">A shop without entries, whose ledger is taken: making the tables takes longer than all that is tried here.</param>
    /// <param name="at">The number of the write, from 1.</param>
    /// <param name="code">What SQLite is told.</param>
    /// <param name="forAll">Whether all after it are refused too.</param>
    public RefusingLedger(Shop empty, int at, int code, bool forAll)
    {
        WatchedFiles.Register();
        empty.Ledger.Dispose();
        File.Copy(In(empty.Folder), In(folder));
        WatchedFiles.Disk = disk;
        var options = new DbContextOptionsBuilder<SqliteLedgerContext>()
            .UseSqlite($"Data Source={In(folder)};Vfs={WatchedFiles.Name};Mode=ReadWrite")
            .AddInterceptors(new DurableConnection(), new CutLedger.Settings(null))
            .Options;
        ledger = new(() => new SqliteLedgerContext(options), TimeProvider.System, empty.Ledger.Id);
        var asked = 0;
        disk.Refuses = () =>
        {
            asked++;
            if (asked != at && !(forAll && asked > at))
                return 0;
            Refused++;
            return code;
        };
    }

    /// <summary>How many writes were refused.</summary>
    public int Refused { get; private set; }

    /// <summary>What the ledger said when it could not write.</summary>
    public IReadOnlyList<string> Said => said;

    /// <summary>How many entries it said that it has.</summary>
    public int Acknowledged => acknowledged.Count;

    /// <summary>Sends a device's entries, batch after batch, until the ledger says no; then the power fails too.</summary>
    public void Take(IReadOnlyList<Entry> chain)
    {
        foreach (var batch in chain.Chunk(InBatch))
        {
            try
            {
                var receipt = ledger.Accept(new(batch[0].Device, 1, [.. batch.Select(EntryJson.Write)]));
                acknowledged.UnionWith(chain.Take(receipt.UpTo).Select(e => e.Id));
            }
            catch (LedgerUnavailable no)
            {
                said.Add(no.Message);
                Cut();
                return; // a device sends what comes after it when it knows of this
            }
        }
    }

    /// <summary>From here on nothing is refused.</summary>
    public void MakeRoom() => disk.Refuses = () => 0;

    /// <summary>What was acknowledged and not found, or a chain that does not verify; empty when all is well.</summary>
    public IReadOnlyList<string> Faults()
    {
        Cut();
        WatchedFiles.Disk = null;
        ledger.Dispose();
        SqliteConnection.ClearAllPools();
        return [.. cuts.SelectMany(cut => CutLedger.Faults(cut.Acknowledged, cut.Files))];
    }

    public void Dispose()
    {
        WatchedFiles.Disk = null;
        ledger.Dispose();
        SqliteConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
    }

    private void Cut() => cuts.Add(([.. acknowledged], disk.AfterCut(new Random(cuts.Count))));

    private static string In(string folder) => Path.Combine(folder, SqliteLedger.FileName);
}
