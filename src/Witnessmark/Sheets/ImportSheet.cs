using System.CommandLine;
using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Toml;
using Witnessmark.Calc;
using Witnessmark.Groups;
using Witnessmark.Ledger;
using Witnessmark.Ledger.PostgreSql;
using Witnessmark.Serve;

namespace Witnessmark.Sheets;

/// <summary><c>witnessmark sheets import FILE</c>: a sheet into the shop's data folder or the store of its group, as the next revision when it is known.</summary>
internal static class ImportSheet
{
    public static Command Create()
    {
        var file = new Argument<FileInfo>("FILE") { Description = "the figure sheet; its name is the sheet's" };
        var data = SheetsCommand.Data();
        var group = GroupOption.Create();
        var by = new Option<string>("--by") { Description = "who takes it in", Required = true };
        var why = new Option<string>("--why") { Description = "why, in a sentence", Required = true };
        var import = new Command(
            "import",
            "Take a figure sheet into a shop. The revision before is kept. Ends with 0 taken in or nothing new, 2 with mistakes."
        )
        {
            file,
            data,
            group,
            by,
            why,
        };
        import.SetAction(parsed =>
            Run(
                parsed.GetRequiredValue(file),
                CommandPlace.Of(parsed, parsed.GetRequiredValue(data), group),
                parsed.GetRequiredValue(by),
                parsed.GetRequiredValue(why)
            )
        );
        return import;
    }

    private static int Run(FileInfo file, CommandPlace to, string by, string why)
    {
        if (!file.Exists)
            return Refused([new(file.Name, 1, 1, "no such file", "a figure sheet")]);
        var name = Path.GetFileNameWithoutExtension(file.Name);
        var brought = new SourceText(SheetFolder.NameOf(name), File.ReadAllText(file.FullName));
        try
        {
            return to.In(shop =>
                shop.Sheets is { } store
                    ? IntoStore(store, new DataFolder(to.Folder).Workbench(), name, brought, by, why)
                    : IntoFolder(new(to.Folder), name, brought, by, why)
            );
        }
        catch (LedgerUnavailable gone)
        {
            Console.Error.WriteLine(gone.Message);
            return ExitCode.Malformed;
        }
    }

    private static int IntoFolder(DataFolder data, string name, SourceText brought, string by, string why) =>
        Taken(data.Workbench(), name, brought, by, why, (before, next) => SheetFolder.Put(data, before, next));

    // no other server makes a revision meanwhile
    private static int IntoStore(
        GroupSheets store,
        IReadOnlyList<SourceText> files,
        string name,
        SourceText brought,
        string by,
        string why
    )
    {
        var ended = ExitCode.Ok;
        store.Add(kept =>
        {
            KeptSheet? made = null;
            ended = Taken(
                KeptSheets.Over(files, kept),
                name,
                brought,
                by,
                why,
                (_, next) => made = new(name, FigureSheets.Read(next).Sheet!.Revision, next.Text)
            );
            return made;
        });
        return ended;
    }

    private static int Taken(
        IReadOnlyList<SourceText> workbench,
        string name,
        SourceText brought,
        string by,
        string why,
        Action<FigureSheet?, SourceText> put
    )
    {
        var known = SheetFolder.Newest(workbench, name);
        var (next, mistakes) = SheetIntake.Take(known, brought, by, DateOnly.FromDateTime(DateTime.Now), why);
        if (next is null)
            return mistakes.Count > 0 ? Refused(mistakes) : Said($"{name}: nothing differs from what the shop has.");
        var before = known is null ? null : FigureSheets.Read(known).Sheet!;
        var (bench, wrong) = WorkbenchFiles.Read(SheetShelf.With(workbench, before, next));
        if (bench is null)
            return Refused(wrong);
        put(before, next);
        var sheet = FigureSheets.Read(next).Sheet!;
        return Said($"{sheet.Name}: taken in as revision {sheet.Revision}, {sheet.Figures.Count} figures.");
    }

    private static int Refused(IReadOnlyList<Mistake> mistakes)
    {
        foreach (var mistake in mistakes)
            Console.Error.WriteLine(mistake);
        Console.Error.WriteLine("Nothing was taken in.");
        return ExitCode.Malformed;
    }

    private static int Said(string words)
    {
        Console.WriteLine(words);
        return ExitCode.Ok;
    }
}
