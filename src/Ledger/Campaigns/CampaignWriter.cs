using System.Data.Common;
using Npgsql;
using Witnessmark.Bench.Campaigns;
using Witnessmark.Ledger.PostgreSql;

namespace Witnessmark.Ledger.Campaigns;

/// <summary>
/// Writes the records of one import. A record is there once, whatever the order of the rows: when two rows of one file say
/// different things of the same record, the louder one stays ("do not ride", then "park outside"), then the one recorded later,
/// then the one whose digest is greater.
/// </summary>
internal abstract class CampaignWriter : IDisposable
{
    /// <summary>As the database wants it: a file row by row, which is quickest there; over a line all at once.</summary>
    /// <param name="connection">Within the transaction of the import; nothing else is asked of it until it is finished.</param>
    /// <param name="run">The import's number.</param>
    public static CampaignWriter On(DbConnection connection, long run) =>
        connection is NpgsqlConnection store ? new CopiedCampaigns(store, run) : new RowByRow(connection, run);

    /// <param name="campaign">The record.</param>
    /// <param name="key">The <see cref="SaysDigest"/> of what it says.</param>
    public abstract void Write(Campaign campaign, byte[] key);

    /// <summary>Closes the import's own books: texts that nothing says any more go.</summary>
    public abstract ImportTotals Finish(long rows, long setAside);

    /// <inheritdoc />
    public abstract void Dispose();

    /// <summary>Takes away what nothing says any more.</summary>
    protected static void DropUnsaid(DbConnection connection) =>
        connection.Run("DELETE FROM says WHERE id IN (SELECT id FROM says EXCEPT SELECT says FROM concern)");
}
