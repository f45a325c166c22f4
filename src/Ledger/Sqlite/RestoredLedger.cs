using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Witnessmark.Ledger.Sqlite;

/// <summary>A ledger that came out of a backup.</summary>
public static class RestoredLedger
{
    /// <summary>
    /// Gives it a new identity, so that every device sends again what it has: what it sent after the backup was written is not in it,
    /// and by the number of its entries alone nobody could tell once new ones have come.
    /// </summary>
    /// <exception cref="LedgerUnavailable">It cannot be written.</exception>
    public static void Rename(string folder, TimeProvider clock)
    {
        try
        {
            using var ledger = new SqliteLedgerContext(SqliteLedger.Options(folder, SqliteOpenMode.ReadWrite, 30));
            var identity = ledger.Identity.Single();
            identity.Id = Guid.NewGuid().ToString("n");
            identity.Created = Moment.Text(clock.GetUtcNow());
            ledger.SaveChanges();
            ledger.Database.CloseConnection();
        }
        catch (Exception broken)
            when (broken is System.Data.Common.DbException or DbUpdateException or InvalidOperationException)
        {
            throw new LedgerUnavailable($"The restored ledger in {folder} cannot be used: {broken.Message}", broken);
        }
    }
}
