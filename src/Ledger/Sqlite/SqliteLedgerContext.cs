using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Design;

namespace Witnessmark.Ledger.Sqlite;

/// <summary>The model in one SQLite file.</summary>
public sealed class SqliteLedgerContext(DbContextOptions<SqliteLedgerContext> options) : LedgerContext(options);

/// <summary>Lets <c>dotnet ef migrations add</c> make a context; no file is opened.</summary>
public sealed class SqliteLedgerContextFactory : IDesignTimeDbContextFactory<SqliteLedgerContext>
{
    /// <inheritdoc />
    public SqliteLedgerContext CreateDbContext(string[] args) =>
        new(new DbContextOptionsBuilder<SqliteLedgerContext>().UseSqlite("Data Source=:memory:").Options);
}
