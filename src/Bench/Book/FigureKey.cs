using Witnessmark.Bench.Toml;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Book;

/// <summary>A figure that points ask the sheets for. The book never gives its value: the maker, the law or the shop does.</summary>
/// <param name="Key"><c>chain.slack</c>.</param>
/// <param name="Unit">A unit of what it measures; a sheet may print any of the same kind.</param>
/// <param name="Words">What it is, so that whoever writes a sheet looks up the right line.</param>
public sealed record FigureKey(string Key, Unit Unit, string Words);

/// <summary>Reads one line of <c>[figure-keys]</c>: <c>"chain.slack" = { unit = "mm", words = "…" }</c>.</summary>
internal static class FigureKeyTable
{
    public static FigureKey Read(string key, TomlTable table)
    {
        if (!table.Has("unit"))
            table.Mistakes.Add(table.Place, "\"unit\" is missing", "unit = \"mm\" or another unit");
        var read = new FigureKey(key, table.UnitOrNothing("unit") ?? UnitTable.Named("1"), table.Text("words"));
        table.NoOtherKeys();
        return read;
    }
}
