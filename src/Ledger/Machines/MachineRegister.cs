using System.Data.Common;
using Microsoft.Data.Sqlite;
using Witnessmark.Bench.Campaigns;
using Witnessmark.Ledger.Campaigns;
using Witnessmark.Ledger.Sqlite;

namespace Witnessmark.Ledger.Machines;

/// <summary>
/// The machines that a shop knows, in an SQLite file of their own. An import is one transaction: a cancelled or broken one
/// leaves everything as it was.
/// </summary>
/// <exception cref="LedgerUnavailable">Any of its functions: the disk is full, or the file locked or broken.</exception>
public sealed class MachineRegister
{
    /// <summary>Name of the file in the data folder.</summary>
    public const string FileName = "machines.db";

    /// <summary>How many machines a search gives at most.</summary>
    public const int MostFound = 50;

    private const int RowsBetweenLooks = 1024;
    private readonly string connectionText;

    private MachineRegister(string folder) =>
        connectionText = new SqliteConnectionStringBuilder
        {
            DataSource = Path.Combine(folder, FileName),
            Pooling = false,
        }.ConnectionString;

    /// <summary>Opens the register in a data folder, makes it when it is not there, and brings its tables up to date.</summary>
    public static MachineRegister Open(string folder)
    {
        Directory.CreateDirectory(folder);
        var register = new MachineRegister(folder);
        register.Do(connection =>
        {
            SqliteLedger.Demand(connection.ServerVersion);
            RegisterSchema.Demand(CampaignSchema.Version(connection)); // before anything is changed
            CampaignSchema.Run(connection, "PRAGMA journal_mode = WAL");
            RegisterSchema.BringUpToDate(connection);
            return true;
        });
        return register;
    }

    /// <summary>The register in a data folder, or null when nothing was ever imported there.</summary>
    public static MachineRegister? OpenIfThere(string folder) =>
        File.Exists(Path.Combine(folder, FileName)) ? Open(folder) : null;

    /// <summary>Takes the rows of a list in; says of each what became of it.</summary>
    /// <exception cref="OperationCanceledException">It was cancelled; everything is as it was.</exception>
    public void Import(IEnumerable<RowToImport> rows, Action<ImportedRow> took, CancellationToken cancel = default) =>
        Do(connection =>
        {
            CampaignSchema.Run(connection, "PRAGMA cache_size = -49152");
            using var transaction = connection.BeginTransaction();
            using var writer = new RegisterWriter(connection, transaction);
            var count = 0;
            foreach (var row in rows)
            {
                if (count++ % RowsBetweenLooks == 0)
                    cancel.ThrowIfCancellationRequested();
                took(writer.Write(row));
            }
            cancel.ThrowIfCancellationRequested();
            transaction.Commit();
            return true;
        });

    /// <summary>Machines with the text inside id, VIN, frame number, plate or owner; only letters and digits count, in either case.</summary>
    /// <returns>Null when fewer than three letters or digits are asked for.</returns>
    public FoundMachines? Find(string text) =>
        NameKey.Of(text) is { Length: >= FindKey.Shortest } key
            ? Do(connection => RegisterLookup.Find(connection, key, MostFound))
            : null;

    /// <summary>One machine, or null.</summary>
    public FoundMachine? Machine(string id) => Do(connection => RegisterLookup.Machine(connection, "id", id));

    /// <summary>Takes away who brings a machine; the record stays. Nothing of the name remains in the file.</summary>
    /// <returns>Whether somebody was on record; null when there is no such machine.</returns>
    public bool? ForgetOwner(string id) =>
        Do<bool?>(connection =>
        {
            if (RegisterLookup.Machine(connection, "id", id) is not { } found)
                return null;
            using (var transaction = connection.BeginTransaction())
            {
                const string machine = "(SELECT row FROM machine WHERE id = $1)";
                foreach (
                    var sql in (string[])
                        [
                            $"DELETE FROM owner_find WHERE rowid = {machine}",
                            $"DELETE FROM owner WHERE machine = {machine}",
                        ]
                )
                {
                    using var delete = new Prepared(connection, transaction, sql, 1);
                    delete.Change(id);
                }
                transaction.Commit();
            }
            CampaignSchema.Run(connection, "PRAGMA wal_checkpoint(TRUNCATE)"); // the log holds old pages
            return found.Owner is not null;
        });

    private T Do<T>(Func<SqliteConnection, T> work)
    {
        try
        {
            using var connection = new SqliteConnection(connectionText);
            connection.Open();
            CampaignSchema.Run(
                connection,
                "PRAGMA synchronous = FULL; PRAGMA foreign_keys = ON; PRAGMA secure_delete = ON"
            );
            return work(connection);
        }
        catch (DbException broken)
        {
            throw new LedgerUnavailable($"{connectionText}: {broken.Message}", broken);
        }
    }
}
