using Witnessmark.Bench.Toml;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Book;

/// <summary>A figure that points ask the sheets for. The book never gives its value: the maker, the law or the shop does.</summary>
/// <param name="Key"><c>chain.slack</c>.</param>
/// <param name="Unit">A unit of what it measures; a sheet may print any of the same kind.</param>
/// <param name="Words">What it is, so that whoever writes a sheet looks up the right line.</param>
/// <param name="Law">The calculation whose table knows what the law of a place demands, or null where none does.</param>
public sealed record FigureKey(string Key, Unit Unit, string Words, string? Law = null);

/// <summary>
/// Reads one line of <c>[figure-keys]</c>: <c>"tyre.tread" = { unit = "mm", words = "…", law = "tread-depth" }</c>, the last one optional.
/// </summary>
internal static class FigureKeyTable
{
    public static FigureKey Read(string key, TomlTable table)
    {
        if (!table.Has("unit"))
            table.Mistakes.Add(table.Place, "\"unit\" is missing", "unit = \"mm\" or another unit");
        var read = new FigureKey(
            key,
            table.UnitOrNothing("unit") ?? UnitTable.Named("1"),
            table.Text("words"),
            table.WordOrNothing("law", ["tread-depth"])
        );
        table.NoOtherKeys();
        return read;
    }
}
