using System.Data.Common;
using System.Globalization;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace Witnessmark.Ledger.Sqlite;

/// <summary>The ledger in one SQLite file: write-ahead log, every commit through to the disk.</summary>
public static class SqliteLedger
{
    /// <summary>Name of the file in the data folder.</summary>
    public const string FileName = "ledger.db";

    // SQLite release notes: 3.51.3 mends a rare loss of commits when a WAL is reset while another connection checkpoints
    private static readonly Version Oldest = new(3, 51, 3);

    /// <summary>Opens the ledger in a data folder, makes it when it is not there, and brings its tables up to date.</summary>
    /// <exception cref="LedgerUnavailable">It cannot be opened, or SQLite is too old.</exception>
    public static ShopLedger Open(string folder, TimeProvider clock, int waitSeconds = 30)
    {
        try
        {
            OwnFolder.Make(folder);
            var options = Options(folder, SqliteOpenMode.ReadWriteCreate, waitSeconds);
            using (var context = new SqliteLedgerContext(options))
                Prepare(context);
            return new(() => new SqliteLedgerContext(options), clock);
        }
        catch (Exception broken) when (broken is DbException or DbUpdateException or UnauthorizedAccessException)
        {
            throw new LedgerUnavailable($"{PathIn(folder)} cannot be opened: {broken.Message}", broken);
        }
    }

    /// <summary>Walks the ledger in a data folder without changing it.</summary>
    /// <exception cref="LedgerUnavailable">There is none, or it cannot be read.</exception>
    public static LedgerFinding Check(string folder) => Read(folder, LedgerCheck.Of);

    /// <summary>When the newest entry came in by the clock of this computer as it was then; null in an empty ledger.</summary>
    /// <exception cref="LedgerUnavailable">There is none, or it cannot be read.</exception>
    public static DateTimeOffset? LastReceived(string folder) =>
        Read(folder, ledger => ledger.Entries.Max(e => e.Received)) is { } text
            ? DateTimeOffset.Parse(text, CultureInfo.InvariantCulture)
            : null;

    private static T Read<T>(string folder, Func<LedgerContext, T> read)
    {
        if (!File.Exists(PathIn(folder)))
            throw new LedgerUnavailable($"There is no ledger {PathIn(folder)}.");
        try
        {
            using var context = new SqliteLedgerContext(Options(folder, SqliteOpenMode.ReadOnly, 30));
            return read(context);
        }
        // a torn file may still be a database, with nothing where something must be
        catch (Exception broken) when (broken is DbException or InvalidOperationException)
        {
            throw new LedgerUnavailable($"{PathIn(folder)} cannot be read: {broken.Message}", broken);
        }
    }

    /// <exception cref="LedgerUnavailable">Older than is safe.</exception>
    internal static void Demand(string version)
    {
        if (Version.Parse(version) < Oldest)
            throw new LedgerUnavailable(
                $"SQLite {version} is too old to keep a ledger; {Oldest} or newer is needed. Use the SQLite that comes with Witnessmark."
            );
    }

    internal static DbContextOptions<SqliteLedgerContext> Options(string folder, SqliteOpenMode mode, int waitSeconds)
    {
        var connection = new SqliteConnectionStringBuilder
        {
            DataSource = PathIn(folder),
            Mode = mode,
            DefaultTimeout = waitSeconds,
            Pooling = mode is SqliteOpenMode.ReadWriteCreate, // only a server comes back again and again
        };
        return new DbContextOptionsBuilder<SqliteLedgerContext>()
            .UseSqlite(connection.ConnectionString)
            .AddInterceptors(new DurableConnection())
            // whether migrations make the model's tables is asked by a test, not each time that a shop opens
            .ConfigureWarnings(all => all.Ignore(RelationalEventId.PendingModelChangesWarning))
            .Options;
    }

    private static string PathIn(string folder) => Path.Combine(folder, FileName);

    private static void Prepare(SqliteLedgerContext context)
    {
        context.Database.OpenConnection();
        Demand(context.Database.GetDbConnection().ServerVersion);
        context.Database.ExecuteSqlRaw("PRAGMA journal_mode=WAL");
        context.Database.Migrate();
    }
}
