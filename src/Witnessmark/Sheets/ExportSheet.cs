using System.CommandLine;
using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Toml;
using Witnessmark.Calc;
using Witnessmark.Groups;
using Witnessmark.Ledger;
using Witnessmark.Serve;

namespace Witnessmark.Sheets;

/// <summary><c>witnessmark sheets export NAME</c>: a sheet as its file, the newest revision or an older one.</summary>
internal static class ExportSheet
{
    public static Command Create()
    {
        var name = new Argument<string>("NAME") { Description = "the sheet, e.g. fell-640" };
        var data = SheetsCommand.Data();
        var group = GroupOption.Create();
        var revision = new Option<int?>("--revision") { Description = "which one; left out: the newest" };
        var to = new Option<FileInfo?>("--out") { Description = "file to write; left out: the terminal" };
        var export = new Command("export", "Give out a figure sheet as TOML. Ends with 0, or 2 when there is none.")
        {
            name,
            data,
            group,
            revision,
            to,
        };
        export.SetAction(parsed =>
            Run(
                parsed.GetRequiredValue(name),
                CommandPlace.Of(parsed, parsed.GetRequiredValue(data), group),
                parsed.GetValue(revision),
                parsed.GetValue(to)
            )
        );
        return export;
    }

    private static int Run(string name, CommandPlace of, int? revision, FileInfo? to)
    {
        try
        {
            return Given(name, of.In(shop => Revisions(name, of, shop)), revision, to);
        }
        catch (LedgerUnavailable gone)
        {
            Console.Error.WriteLine(gone.Message);
            return ExitCode.Malformed;
        }
    }

    private static int Given(string name, List<(int Revision, SourceText File)> revisions, int? revision, FileInfo? to)
    {
        var wanted = revision ?? revisions.Select(r => r.Revision).DefaultIfEmpty(0).Max();
        if (revisions.FirstOrDefault(r => r.Revision == wanted).File is not { } file)
        {
            Console.Error.WriteLine(
                revisions.Count == 0
                    ? $"The shop has no figure sheet \"{name}\"."
                    : $"The shop has no revision {wanted} of \"{name}\"; it has {string.Join(", ", revisions.Select(r => r.Revision))}."
            );
            return ExitCode.Malformed;
        }
        if (to is null)
            Console.Write(file.Text);
        else
            File.WriteAllText(to.FullName, file.Text);
        return ExitCode.Ok;
    }

    private static List<(int Revision, SourceText File)> Revisions(string name, CommandPlace of, ShopPlace shop) =>
        [
            .. KeptSheets
                .Over(new DataFolder(of.Folder).Workbench(), shop.Sheets)
                .Where(f => f.Name.StartsWith("sheets/", StringComparison.Ordinal))
                .Select(f => (FigureSheets.Read(f).Sheet, File: f))
                .Where(r => r.Sheet?.Id == name)
                .Select(r => (r.Sheet!.Revision, r.File))
                .OrderBy(r => r.Revision),
        ];
}
