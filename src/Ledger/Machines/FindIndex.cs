using System.Data.Common;

namespace Witnessmark.Ledger.Machines;

/// <summary>
/// One of the two indices that a find looks in, written in batches. Between other writes SQLite would have to bring the index to
/// the disk for each row anew, which takes six times as long.
/// </summary>
internal sealed class FindIndex(DbConnection connection, string table) : IDisposable
{
    private const int Batch = 4096;
    private readonly List<(long Row, bool Before, string Keys)> waiting = [];

    private readonly Prepared remove = Prepared.On(connection, $"DELETE FROM {table} WHERE rowid = $1", 1);
    private readonly Prepared add = Prepared.On(connection, $"INSERT INTO {table} (rowid, keys) VALUES ($1, $2)", 2);

    /// <summary>Puts a row under these texts; each row once.</summary>
    /// <param name="row">Of the machine.</param>
    /// <param name="before">Whether it stands there under others.</param>
    /// <param name="texts">What it is found by.</param>
    public void Put(long row, bool before, IEnumerable<string?> texts)
    {
        waiting.Add((row, before, FindKey.Of(texts)));
        if (waiting.Count == Batch)
            Write();
    }

    /// <summary>Writes what waits.</summary>
    public void Write()
    {
        foreach (var (row, before, keys) in waiting)
        {
            if (before)
                remove.Change(row);
            add.Change(row, keys);
        }
        waiting.Clear();
    }

    public void Dispose()
    {
        remove.Dispose();
        add.Dispose();
    }
}
