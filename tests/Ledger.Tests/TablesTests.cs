using Microsoft.EntityFrameworkCore;
using Witnessmark.Ledger.Sqlite;

namespace Witnessmark.Ledger.Tests;

// Source: EF Core, what "dotnet ef migrations has-pending-model-changes" asks.
public sealed class TablesTests
{
    [Fact]
    public void Migrations_make_the_tables_that_the_model_has()
    {
        using var context = new SqliteLedgerContextFactory().CreateDbContext([]);
        Assert.False(context.Database.HasPendingModelChanges());
    }
}
