using System.Data.Common;
using System.Globalization;
using Witnessmark.Bench.Stock;

namespace Witnessmark.Ledger.Stock;

/// <summary>Moves as rows of the table.</summary>
internal static class MoveRows
{
    // as they stand in files that are kept: never changed
    private static readonly Dictionary<string, StockMoveKind> Kinds = new()
    {
        ["received"] = StockMoveKind.Received,
        ["reserved"] = StockMoveKind.Reserved,
        ["used"] = StockMoveKind.Used,
        ["returned"] = StockMoveKind.Returned,
        ["counted"] = StockMoveKind.Counted,
        ["discarded"] = StockMoveKind.Discarded,
    };

    /// <summary>All, in the order in which they were taken in.</summary>
    public static IEnumerable<StockMove> All(DbConnection connection)
    {
        using var command = connection.CreateCommand();
        command.CommandText = "SELECT id, kind, item, size, batch, amount, person, at, job, why FROM move ORDER BY row";
        using var row = command.ExecuteReader();
        string? Text(int at) => row.IsDBNull(at) ? null : row.GetString(at);
        while (row.Read())
            yield return new(
                row.GetString(0),
                Kind(row.GetString(1)),
                new(row.GetString(2), Text(3), Text(4)),
                decimal.Parse(row.GetString(5), NumberStyles.Float, CultureInfo.InvariantCulture),
                row.GetString(6),
                row.GetString(7),
                Text(8),
                Text(9)
            );
    }

    public static void Add(DbConnection connection, StockMove move) =>
        connection.Change(
            "INSERT INTO move (id, kind, item, size, batch, amount, person, at, job, why) VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10)",
            move.Id,
            Kinds.Single(k => k.Value == move.Kind).Key,
            move.What.Item,
            move.What.Size,
            move.What.Batch,
            Amounts.Text(move.Amount),
            move.By,
            move.At,
            move.Job,
            move.Why
        );

    private static StockMoveKind Kind(string word) =>
        Kinds.TryGetValue(word, out var kind)
            ? kind
            : throw new LedgerUnavailable(
                $"A move of the kind \"{word}\" is not known to this program.",
                new FormatException()
            );
}
