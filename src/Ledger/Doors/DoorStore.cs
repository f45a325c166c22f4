using Witnessmark.Ledger.Sqlite;

namespace Witnessmark.Ledger.Doors;

/// <summary>Who may come in and with which device, in an SQLite file of their own beside the ledger.</summary>
/// <exception cref="LedgerUnavailable">Any of its functions: the disk is full, or the file locked or broken.</exception>
public sealed class DoorStore
{
    /// <summary>Name of the file in the data folder.</summary>
    public const string FileName = "door.db";

    private readonly KeptFile file;

    private DoorStore(string folder) =>
        file = new(
            Path.Combine(folder, FileName),
            foreignKeys: true,
            connection => connection.Run("PRAGMA synchronous = FULL")
        );

    /// <summary>Opens the store in a data folder, makes it when it is not there, and brings its tables up to date.</summary>
    public static DoorStore Open(string folder)
    {
        var store = new DoorStore(folder);
        store.file.Prepare(DoorSchema.Steps);
        return store;
    }

    /// <summary>The store in a data folder, or null when the shop never had a door.</summary>
    public static DoorStore? OpenIfThere(string folder) =>
        File.Exists(Path.Combine(folder, FileName)) ? Open(folder) : null;

    /// <summary>Looks and changes in one transaction: all of it stands, or nothing.</summary>
    public T Do<T>(Func<DoorRows, T> work) =>
        file.Do(connection =>
        {
            using var transaction = connection.BeginTransaction(deferred: false);
            var done = work(new(connection));
            transaction.Commit();
            return done;
        });

    /// <summary>Only looks: waits for nobody who writes.</summary>
    public T Look<T>(Func<DoorRows, T> look) => file.Do(connection => look(new(connection)));
}
