using System.Data.Common;
using Microsoft.Data.Sqlite;
using Npgsql;
using Witnessmark.Ledger.Campaigns;
using Witnessmark.Ledger.Doors;
using Witnessmark.Ledger.Machines;
using Witnessmark.Ledger.Sqlite;
using Witnessmark.Ledger.Stock;

namespace Witnessmark.Ledger.PostgreSql;

/// <summary>Copies a shop from its data folder into the group's store: in one transaction, looked at before it counts. The folder is only read.</summary>
public static class FolderCopy
{
    private const int RowsAtOnce = 500;

    // a file of an older program may lack the last of them
    private static readonly (string File, string[] Tables, string[] Later)[] Files =
    [
        (SqliteLedger.FileName, ["entries", "job_heads", "ledger_identity", "set_aside"], []),
        (
            DoorStore.FileName,
            [
                "person",
                "device",
                "code",
                "session",
                "used_nonce",
                "used_confirmation",
                "unconfirmed",
                "event",
                "shop_key",
                "closed",
            ],
            []
        ),
        (StockStore.FileName, ["move"], []),
        (MachineRegister.FileName, ["machine", "distance", "owner"], []),
        (CampaignStore.FileName, ["import", "model", "campaign", "says", "concern"], ["withdrawn"]),
    ];

    /// <summary>Copies; what is in the store then.</summary>
    /// <param name="folder">The data folder.</param>
    /// <param name="connection">Of the shop, which has nothing in the store yet.</param>
    /// <param name="photographs">Paths of its photographs by their hash.</param>
    /// <param name="logBooks">Log books that machines brought along, by their names.</param>
    /// <param name="secrets">Its sealed secrets by name.</param>
    /// <exception cref="ChangedFolder">What was copied is not whole; nothing is kept.</exception>
    /// <exception cref="LedgerUnavailable">A file cannot be read, the store cannot be used, or has the shop already; nothing is kept.</exception>
    public static LedgerFinding Into(
        string folder,
        string connection,
        IReadOnlyDictionary<string, string> photographs,
        IReadOnlyDictionary<string, string> logBooks,
        IReadOnlyDictionary<string, byte[]> secrets
    )
    {
        var (shop, source) = GroupConnection.OfShop(connection);
        using (source)
            try
            {
                using var store = source.OpenConnection();
                using var transaction = store.BeginTransaction();
                DemandEmpty(store, shop);
                foreach (var (file, tables, later) in Files.Where(f => File.Exists(Path.Combine(folder, f.File))))
                    Copy(Path.Combine(folder, file), tables, later, store);
                RegisterFinding.MakeAnew(store);
                store.Run(GroupSchema.GoOnNumbering());
                foreach (var (sha256, path) in photographs)
                    Put(store, sha256, File.ReadAllBytes(path));
                foreach (var (name, book) in logBooks)
                    store.Change("INSERT INTO log_book (name, book) VALUES ($1, $2)", name, book);
                foreach (var (name, made) in secrets)
                    store.Change("INSERT INTO sealed_secret (name, sealed) VALUES ($1, $2)", name, made);
                var found = Checked(store, transaction);
                Turn.Keep(store, transaction.Commit);
                return found;
            }
            catch (DbException broken)
            {
                throw new LedgerUnavailable($"Nothing was copied: {broken.GetBaseException().Message}", broken);
            }
    }

    private static void DemandEmpty(NpgsqlConnection store, ShopName shop)
    {
        foreach (var what in Turn.All)
            store.Change("INSERT INTO turn (what) VALUES ($1) ON CONFLICT DO NOTHING", what);
        foreach (var what in Turn.All)
            Turn.Take(store, what); // nobody serves it meanwhile
        foreach (var table in GroupSchema.Tables.Where(t => t.Name != "turn"))
            if (store.Rows($"SELECT 1 FROM {table.Name} LIMIT 1", row => row.GetInt32(0)).Count > 0)
                throw new LedgerUnavailable(
                    $"The store has rows of the shop \"{shop}\" already ({table.Name}). Nothing was copied; nothing is ever copied over."
                );
    }

    private static void Copy(string file, string[] tables, string[] later, NpgsqlConnection store)
    {
        var text = new SqliteConnectionStringBuilder
        {
            DataSource = file,
            Mode = SqliteOpenMode.ReadOnly,
            Pooling = false,
        };
        using var from = new SqliteConnection(text.ConnectionString);
        from.Open();
        using var still = from.BeginTransaction(deferred: true); // all tables of one moment
        foreach (var table in tables.Concat(later.Where(t => Has(from, t))))
            Copy(from, table, store);
    }

    private static bool Has(SqliteConnection from, string table) =>
        from.Rows("SELECT 1 FROM sqlite_master WHERE type = 'table' AND name = $1", row => row.GetInt64(0), table).Count
        > 0;

    private static void Copy(SqliteConnection from, string table, NpgsqlConnection store)
    {
        using var all = from.CreateCommand();
        all.CommandText = $"SELECT * FROM {table} ORDER BY 1";
        using var row = all.ExecuteReader();
        string[] columns = [.. Enumerable.Range(0, row.FieldCount).Select(row.GetName)];
        var insert =
            $"INSERT INTO {table} ({string.Join(", ", columns.Select(c => $"\"{c}\""))}) "
            + $"VALUES ({string.Join(", ", columns.Select((_, i) => $"${i + 1}"))})";
        using var batch = new NpgsqlBatch(store);
        while (row.Read())
        {
            batch.BatchCommands.Add(Filled(insert, row));
            if (batch.BatchCommands.Count == RowsAtOnce)
                Send(batch);
        }
        Send(batch);
    }

    private static NpgsqlBatchCommand Filled(string insert, SqliteDataReader row)
    {
        var command = new NpgsqlBatchCommand(insert);
        for (var i = 0; i < row.FieldCount; i++)
            command.Parameters.Add(new NpgsqlParameter { Value = row.GetValue(i) });
        return command;
    }

    private static void Send(NpgsqlBatch batch)
    {
        if (batch.BatchCommands.Count > 0)
            batch.ExecuteNonQuery();
        batch.BatchCommands.Clear();
    }

    private static void Put(NpgsqlConnection store, string sha256, byte[] photograph)
    {
        if (GroupFiles.HashOf(photograph) != sha256)
            throw new ChangedFolder([$"The photograph {sha256} is another picture than its name says."]);
        store.Change("INSERT INTO photograph (sha256, bytes) VALUES ($1, $2)", sha256, photograph);
    }

    private static LedgerFinding Checked(NpgsqlConnection store, DbTransaction transaction)
    {
        using var ledger = PostgresLedgerContext.Over(store);
        Microsoft.EntityFrameworkCore.RelationalDatabaseFacadeExtensions.UseTransaction(ledger.Database, transaction);
        var found = LedgerCheck.Of(ledger);
        string[] faults =
        [
            .. found.Faults,
            .. EventChain.Fault(new DoorRows(store).AllEvents()) is { } fault ? [fault] : (string[])[],
        ];
        return faults.Length == 0 ? found : throw new ChangedFolder(faults);
    }
}

/// <summary>What was copied is not whole, a sentence for each fault.</summary>
public sealed class ChangedFolder(IReadOnlyList<string> faults) : IOException(string.Join(" ", faults))
{
    /// <summary>The faults.</summary>
    public IReadOnlyList<string> Faults => faults;
}
