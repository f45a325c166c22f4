using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Toml;
using Witnessmark.Ledger.PostgreSql;

namespace Witnessmark.Sheets;

/// <summary>The files of a workbench with the revisions of figure sheets that a group's store keeps laid over them.</summary>
/// <remarks>Of a revision that both have, the store's counts: every server of the shop has seen that one.</remarks>
internal static class KeptSheets
{
    /// <summary>The files as they count; as they are where nothing is kept in a store.</summary>
    public static IReadOnlyList<SourceText> Over(IReadOnlyList<SourceText> files, GroupSheets? store) =>
        store is null ? files : Over(files, store.All());

    /// <summary>The files as they count.</summary>
    public static IReadOnlyList<SourceText> Over(IReadOnlyList<SourceText> files, IReadOnlyList<KeptSheet> kept) =>
        kept.Aggregate(files, Over);

    private static IReadOnlyList<SourceText> Over(IReadOnlyList<SourceText> files, KeptSheet kept)
    {
        SourceText[] others = [.. files.Where(f => !Is(f, kept))];
        var newest = SheetFolder.Newest(others, kept.Sheet) is { } file ? FigureSheets.Read(file).Sheet : null;
        return newest is not null && newest.Revision > kept.Revision
            ? [.. others, new(SheetFolder.NameOf(kept.Sheet, kept.Revision), kept.Text)]
            : SheetShelf.With(others, newest, new(SheetFolder.NameOf(kept.Sheet), kept.Text));
    }

    private static bool Is(SourceText file, KeptSheet kept) =>
        file.Name.StartsWith("sheets/", StringComparison.Ordinal)
        && FigureSheets.Read(file).Sheet is { } sheet
        && sheet.Id == kept.Sheet
        && sheet.Revision == kept.Revision;
}
