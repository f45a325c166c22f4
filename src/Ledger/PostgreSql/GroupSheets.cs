using System.Data.Common;

namespace Witnessmark.Ledger.PostgreSql;

/// <summary>Revisions of figure sheets that were made on a screen, in place of files that each server would have for itself. None is ever changed.</summary>
/// <exception cref="LedgerUnavailable">Any of its functions.</exception>
public sealed class GroupSheets
{
    private readonly KeptRows kept;

    internal GroupSheets(KeptRows kept) => this.kept = kept;

    /// <summary>The number of the newest; 0 when there is none. It grows with each.</summary>
    public long Last() =>
        kept.Look(c => c.Rows("SELECT coalesce(max(number), 0) FROM sheet_revision", row => row.GetInt64(0)).Single());

    /// <summary>All of them in the order in which they were made.</summary>
    public IReadOnlyList<KeptSheet> All() => kept.Look(All);

    /// <summary>Looks at all and perhaps adds one, while no other server of the shop does.</summary>
    /// <param name="next">Gets those that there are; gives the one to add, or null.</param>
    public void Add(Func<IReadOnlyList<KeptSheet>, KeptSheet?> next) =>
        kept.Change(c =>
        {
            if (next(All(c)) is { } made)
                c.Change(
                    "INSERT INTO sheet_revision (sheet, revision, body) VALUES ($1, $2, $3)",
                    made.Sheet,
                    made.Revision,
                    made.Text
                );
            return true;
        });

    private static IReadOnlyList<KeptSheet> All(DbConnection connection) =>
        connection.Rows(
            "SELECT number, sheet, revision, body FROM sheet_revision ORDER BY number",
            row => new KeptSheet(row.GetString(1), row.GetInt32(2), row.GetString(3), row.GetInt64(0))
        );
}

/// <summary>A revision of a figure sheet.</summary>
/// <param name="Sheet">Id of the sheet.</param>
/// <param name="Revision">Which one, from 1.</param>
/// <param name="Text">The whole file.</param>
/// <param name="Number">As the store numbers it; 0 until then.</param>
public sealed record KeptSheet(string Sheet, int Revision, string Text, long Number = 0);
