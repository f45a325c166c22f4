using Witnessmark.Bench.Book;
using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Machines;
using Witnessmark.Bench.Toml;

namespace Witnessmark.Bench.Jobs;

/// <summary>
/// Reads all files of a workshop: <c>book/*.toml</c> (points, purposes), <c>own-book/*.toml</c>, which overrides it name by
/// name, <c>sheets/*.toml</c> and <c>shop.toml</c>. All or nothing: with a mistake anywhere there is no workbench, and all mistakes are told at once.
/// </summary>
public static class WorkbenchFiles
{
    /// <summary>The workbench, or the mistakes that keep it from being one, by file and line.</summary>
    public static (Workbench? Bench, IReadOnlyList<Mistake> Mistakes) Read(IEnumerable<SourceText> sources)
    {
        var mistakes = new Mistakes();
        var book = new BenchBookFile();
        List<SheetRead> sheets = [];
        List<WorkshopRead> shops = [];
        var torn = false;
        foreach (var source in sources.OrderBy(s => s.Name, StringComparer.Ordinal))
        {
            var file = TomlFile.Read(source, mistakes);
            torn |= file.Torn;
            if (!file.Torn)
                Take(file, book, sheets, shops, mistakes);
        }
        if (!torn) // what a torn file would have named must not be called unknown
            AcrossFiles.Check(book, sheets, shops, mistakes);
        return mistakes.Count > 0
            ? (null, mistakes.Sorted())
            : (new(shops[0].Workshop, book.Book, [.. sheets.Select(s => s.Sheet)]), []);
    }

    private static void Take(
        TomlFile file,
        BenchBookFile book,
        List<SheetRead> sheets,
        List<WorkshopRead> shops,
        Mistakes mistakes
    )
    {
        switch (FolderOf(file.Name))
        {
            case "book":
                book.Take(file, 0);
                break;
            case "own-book":
                book.Take(file, 1);
                break;
            case "sheets":
                sheets.Add(FigureSheetFile.Read(file));
                break;
            case var _ when Path.GetFileName(file.Name) == "shop.toml":
                shops.Add(WorkshopFile.Read(file));
                break;
            default:
                mistakes.Add(
                    new(file.Name, 1, 1),
                    "a file in no known place",
                    "book/NAME.toml, own-book/NAME.toml, sheets/NAME.toml or shop.toml"
                );
                break;
        }
    }

    private static string FolderOf(string name) => Path.GetFileName(Path.GetDirectoryName(name)) ?? "";
}
