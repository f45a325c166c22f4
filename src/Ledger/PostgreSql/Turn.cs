using System.Data.Common;
using Npgsql;

namespace Witnessmark.Ledger.PostgreSql;

/// <summary>One server of a shop writes at a time, and what it says that it has is where it must be.</summary>
/// <remarks>
/// <para>The turn is a locked row and no advisory lock, and that matters. Locking a row is written to the log, so the commit of whoever had the turn waits for
/// the standby even when it wrote nothing else. Without it, "the shop has that already" could be said of rows that only this
/// machine has: those of a commit whose wait for the standby was broken off (cancelled, or the server was started anew meanwhile) are seen by everybody from then on.</para>
/// <para><b>Source.</b> PostgreSQL 15 documentation, 27.2.8 Synchronous Replication: a transaction that wrote nothing does not wait; 20.5, <c>pg_cancel_backend</c> during the wait ends it with a warning.</para>
/// </remarks>
internal static class Turn
{
    public const string Ledger = "ledger";
    public const string Door = "door";
    public const string Stock = "stock";
    public const string Files = "files";
    public const string Machines = "machines";
    public const string Campaigns = "campaigns";
    public const string Sheets = "sheets";

    /// <summary>All of them, made once for a shop.</summary>
    public static readonly IReadOnlyList<string> All = [Ledger, Door, Stock, Files, Machines, Campaigns, Sheets];

    /// <summary>Waits for the turn, inside of a transaction; it ends with it.</summary>
    public static void Take(DbConnection connection, string what)
    {
        if (
            connection.Rows("SELECT what FROM turn WHERE what = $1 FOR UPDATE", row => row.GetString(0), what).Count
            == 0
        )
            throw new LedgerUnavailable($"The store knows no turn \"{what}\": it was not made by this program.");
    }

    /// <summary>Commits. When this returns, what was written is on the disk, and on the standby where there is one.</summary>
    /// <exception cref="LedgerUnavailable">The wait for the standby was broken off.</exception>
    public static void Keep(NpgsqlConnection connection, Action commit)
    {
        string? warning = null;
        void Hear(object sender, NpgsqlNoticeEventArgs said) =>
            warning ??= said.Notice.InvariantSeverity == "WARNING" ? said.Notice.MessageText : null;
        connection.Notice += Hear;
        try
        {
            commit();
        }
        finally
        {
            connection.Notice -= Hear;
        }
        if (warning is not null)
            throw new LedgerUnavailable($"The store has it, the standby may not: {warning}");
    }
}
