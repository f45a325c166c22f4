using Witnessmark.Ledger.Sqlite;

namespace Witnessmark.Ledger.Machines;

/// <summary>
/// The tables of <c>machines.db</c>.
/// </summary>
/// <remarks>
/// Owners lie in tables of their own, also for finding, so that they can be taken away. <b>Source.</b> SQLite documentation, FTS5: the
/// trigram tokenizer finds any three signs or more inside a text; <c>secure-delete</c> leaves nothing of a removed row in the index.
/// </remarks>
internal static class RegisterSchema
{
    public static readonly SchemaSteps Steps = new(
        "The machines",
        """
        CREATE TABLE machine (
            row INTEGER PRIMARY KEY,
            id TEXT NOT NULL UNIQUE,
            vin TEXT UNIQUE,
            frame TEXT,
            plate TEXT,
            make TEXT,
            name TEXT NOT NULL,
            year INTEGER,
            sheet TEXT
        );
        CREATE TABLE distance (
            machine INTEGER NOT NULL REFERENCES machine,
            day TEXT NOT NULL,
            km REAL NOT NULL,
            PRIMARY KEY (machine, day, km)
        ) WITHOUT ROWID;
        CREATE TABLE owner (
            machine INTEGER PRIMARY KEY REFERENCES machine,
            name TEXT NOT NULL,
            contact TEXT NOT NULL
        );
        CREATE VIRTUAL TABLE machine_find USING fts5(keys, tokenize = 'trigram');
        CREATE VIRTUAL TABLE owner_find USING fts5(keys, tokenize = 'trigram');
        INSERT INTO owner_find(owner_find, rank) VALUES ('secure-delete', 1);
        """,
        // make, model and year are found too; find_key is given to each connection
        """
        DELETE FROM machine_find;
        INSERT INTO machine_find (rowid, keys)
            SELECT row, concat_ws('|', nullif(find_key(id), ''), nullif(find_key(vin), ''), nullif(find_key(frame), ''),
                nullif(find_key(plate), ''), nullif(find_key(concat_ws(' ', make, name, year)), ''))
            FROM machine;
        """
    );
}
