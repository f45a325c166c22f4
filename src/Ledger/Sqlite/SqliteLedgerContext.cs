using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Design;

namespace Witnessmark.Ledger.Sqlite;

/// <summary>The model in one SQLite file.</summary>
public sealed class SqliteLedgerContext(DbContextOptions<SqliteLedgerContext> options) : LedgerContext(options)
{
    private SqliteConnection Connection => (SqliteConnection)Database.GetDbConnection();

    /// <inheritdoc />
    public override bool StaysOpen => true;

    /// <inheritdoc />
    public override void CloseUnused() => SqliteConnection.ClearPool(Connection);

    /// <inheritdoc />
    public override bool WasMoved => MovedFile.Is(Connection);
}

/// <summary>Lets <c>dotnet ef migrations add</c> make a context; no file is opened.</summary>
public sealed class SqliteLedgerContextFactory : IDesignTimeDbContextFactory<SqliteLedgerContext>
{
    /// <inheritdoc />
    public SqliteLedgerContext CreateDbContext(string[] args) =>
        new(new DbContextOptionsBuilder<SqliteLedgerContext>().UseSqlite("Data Source=:memory:").Options);
}
