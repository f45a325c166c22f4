using Witnessmark.Ledger.Sqlite;

namespace Witnessmark.Ledger.Doors;

/// <summary>Who may come in and with which device, beside the ledger.</summary>
/// <exception cref="LedgerUnavailable">Any of its functions: the disk is full, or the file locked or broken.</exception>
public sealed class DoorStore
{
    /// <summary>Name of the file in the data folder.</summary>
    public const string FileName = "door.db";

    private readonly KeptRows kept;

    internal DoorStore(KeptRows kept) => this.kept = kept;

    /// <summary>Opens the store in a data folder, makes it when it is not there, and brings its tables up to date.</summary>
    public static DoorStore Open(string folder)
    {
        var file = new KeptFile(
            Path.Combine(folder, FileName),
            foreignKeys: true,
            connection => connection.Run("PRAGMA synchronous = FULL")
        );
        file.Prepare(DoorSchema.Steps);
        return new(file);
    }

    /// <summary>The store in a data folder, or null when the shop never had a door.</summary>
    public static DoorStore? OpenIfThere(string folder) =>
        File.Exists(Path.Combine(folder, FileName)) ? Open(folder) : null;

    /// <summary>Entries that count for nothing: nobody showed whose word they count by.</summary>
    public IReadOnlySet<string> NotCounting() => Look(rows => rows.Flagged()).ToHashSet(StringComparer.Ordinal);

    /// <summary>Is told each event once it is kept.</summary>
    public Action<DoorEvent> Told { get; set; } = _ => { };

    /// <summary>Looks and changes in one transaction: all of it stands, or nothing.</summary>
    public T Do<T>(Func<DoorRows, T> work)
    {
        var (done, noted) = kept.Change(connection =>
        {
            var rows = new DoorRows(connection);
            return (work(rows), rows.Noted);
        });
        foreach (var happened in noted)
            Told(happened);
        return done;
    }

    /// <summary>Only looks: waits for nobody who writes.</summary>
    public T Look<T>(Func<DoorRows, T> look) => kept.Look(connection => look(new(connection)));
}
