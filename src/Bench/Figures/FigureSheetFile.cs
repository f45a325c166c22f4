using System.Globalization;
using Witnessmark.Bench.Toml;

namespace Witnessmark.Bench.Figures;

/// <summary>A figure sheet with the tree it was read from, so that checks across files can say where.</summary>
/// <param name="Sheet">The sheet; figures that cannot be taken are left out.</param>
/// <param name="File">Its tree.</param>
/// <param name="Declared">Keys of all figures that stand in it, taken or not.</param>
internal sealed record SheetRead(FigureSheet Sheet, TomlFile File, IReadOnlyCollection<string> Declared);

/// <summary>
/// Reads <c>sheets/NAME.toml</c>. Older revisions stand beside the newest as <c>sheets/NAME.r3.toml</c>, because a job keeps the
/// revision that it was judged by.
/// </summary>
internal static class FigureSheetFile
{
    private static readonly Dictionary<string, int> Drives = new()
    {
        ["chain"] = 0,
        ["belt"] = 1,
        ["shaft"] = 2,
    };

    public static SheetRead Read(TomlFile file)
    {
        var root = file.Root;
        var documents = Documents(root);
        var figures = root.Tables("figures").ToArray();
        var head = root.Table("sheet");
        var (id, revisionInName) = IdOf(file.Name);
        var revision = Revision(head, revisionInName);
        var sheet = new FigureSheet(
            id,
            head.Text("name"),
            head.Text("years"),
            Drive(head),
            head.Whole("cylinders", 1, 12),
            revision,
            documents,
            Figures(figures, documents.Keys),
            MachineFacts.ReadGeometry(root.TableOrNothing("geometry")),
            MachineFacts.ReadFacts(root.TableOrNothing("facts")),
            ScheduleTable.Read(root.TableList("schedule"), documents.Keys),
            [.. root.TableList("changes").Select(t => SheetChange.Read(t, revision))]
        );
        head.NoOtherKeys();
        root.NoOtherKeys();
        return new(sheet, file, [.. figures.Select(f => f.Name)]);
    }

    private static (string Id, int? Revision) IdOf(string fileName)
    {
        var name = Path.GetFileNameWithoutExtension(fileName);
        var at = name.LastIndexOf(".r", StringComparison.Ordinal);
        return
            at > 0 && int.TryParse(name[(at + 2)..], NumberStyles.None, CultureInfo.InvariantCulture, out var revision)
            ? (name[..at], revision)
            : (name, null);
    }

    private static int Revision(TomlTable head, int? inName)
    {
        var revision = head.Whole("revision", 1, 1_000_000);
        if (inName is { } named && named != revision)
            head.Wrong(
                "revision",
                $"revision {revision} in a file named for revision {named}",
                $"revision = {named}, or another file name"
            );
        return revision;
    }

    private static string Drive(TomlTable head)
    {
        _ = head.OneOf("drive", Drives);
        return head.TextOrNothing("drive") ?? "";
    }

    private static Dictionary<string, SheetDocument> Documents(TomlTable root)
    {
        Dictionary<string, SheetDocument> documents = [];
        foreach (var (name, table) in root.Tables("documents"))
        {
            documents[name] = new(table.Text("title"), table.Text("edition"));
            table.NoOtherKeys();
        }
        return documents;
    }

    private static Dictionary<string, Figure> Figures(
        IEnumerable<(string Name, TomlTable Table)> tables,
        IReadOnlyCollection<string> documents
    )
    {
        Dictionary<string, Figure> figures = [];
        foreach (var (name, table) in tables)
            if (FigureTable.Read(name, table, documents) is { } figure)
                figures[name] = figure;
        return figures;
    }
}
