using System.Data.Common;
using Microsoft.Data.Sqlite;
using Witnessmark.Bench.Campaigns;
using Witnessmark.Ledger.Sqlite;

namespace Witnessmark.Ledger.Machines;

/// <summary>
/// The machines that a shop knows, in an SQLite file of their own or in the store of its group. An import is one transaction: a cancelled or broken one
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
    private readonly KeptRows kept;
    private readonly Action forgotten;

    /// <param name="kept">Where its rows are.</param>
    /// <param name="forgotten">What is still to do when an owner is gone, so that nothing of the name remains.</param>
    internal MachineRegister(KeptRows kept, Action forgotten) => (this.kept, this.forgotten) = (kept, forgotten);

    /// <summary>Opens the register in a data folder, makes it when it is not there, and brings its tables up to date.</summary>
    public static MachineRegister Open(string folder)
    {
        var file = new KeptFile(Path.Combine(folder, FileName), foreignKeys: true, Begin);
        file.Prepare(RegisterSchema.Steps);
        return new(
            file,
            () =>
                file.Do(connection =>
                {
                    connection.Run("PRAGMA wal_checkpoint(TRUNCATE)"); // the log holds old pages
                    return true;
                })
        );
    }

    /// <summary>The register in a data folder, or null when nothing was ever imported there.</summary>
    public static MachineRegister? OpenIfThere(string folder) =>
        File.Exists(Path.Combine(folder, FileName)) ? Open(folder) : null;

    /// <summary>Takes the rows of a list in; says of each what became of it.</summary>
    /// <exception cref="OperationCanceledException">It was cancelled; everything is as it was.</exception>
    public void Import(IEnumerable<RowToImport> rows, Action<ImportedRow> took, CancellationToken cancel = default) =>
        kept.Change(connection =>
        {
            using var writer = new RegisterWriter(connection);
            var count = 0;
            foreach (var part in rows.Chunk(RegisterWriter.Ahead))
            {
                writer.Expect(part);
                foreach (var row in part)
                {
                    if (count++ % RowsBetweenLooks == 0)
                        cancel.ThrowIfCancellationRequested();
                    took(writer.Write(row));
                }
            }
            cancel.ThrowIfCancellationRequested();
            writer.Finish();
            return true;
        });

    /// <summary>
    /// Machines with the text inside id, VIN, frame number, plate, make with model and year, or owner, or with all its words in one
    /// of machine and owner; only letters and digits count, in either case.
    /// </summary>
    /// <returns>Null when fewer than three letters or digits are asked for.</returns>
    public FoundMachines? Find(string text) =>
        FindText.Of(text) is { } asked
            ? kept.Look(connection => RegisterLookup.Find(connection, asked, MostFound))
            : null;

    /// <summary>One machine, or null.</summary>
    public FoundMachine? Machine(string id) => kept.Look(connection => RegisterLookup.Machine(connection, "id", id));

    /// <summary>Takes away who brings a machine; the record stays. Nothing of the name remains in a file; what a group's store keeps of old rows is PostgreSQL's.</summary>
    /// <returns>Whether somebody was on record; null when there is no such machine.</returns>
    public bool? ForgetOwner(string id)
    {
        var known = kept.Change(connection => ForgetOwner(connection, id));
        if (known == true)
            forgotten();
        return known;
    }

    /// <summary>Whether no list was ever taken in.</summary>
    public bool IsEmpty => kept.Look(connection => !RegisterLookup.HasAny(connection));

    private static bool? ForgetOwner(DbConnection connection, string id)
    {
        const string machine = "(SELECT row FROM machine WHERE id = $1)";
        if (RegisterLookup.Machine(connection, "id", id) is not { } found)
            return null;
        connection.Change($"DELETE FROM owner_find WHERE rowid = {machine}", id);
        connection.Change($"DELETE FROM owner WHERE machine = {machine}", id);
        return found.Owner is not null;
    }

    private static void Begin(SqliteConnection connection)
    {
        connection.CreateFunction<string?, string>("find_key", text => NameKey.Of(text ?? ""));
        connection.Run("PRAGMA synchronous = FULL; PRAGMA secure_delete = ON; PRAGMA cache_size = -49152");
    }
}
