using System.CommandLine;
using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Toml;
using Witnessmark.Calc;
using Witnessmark.Serve;

namespace Witnessmark.Sheets;

/// <summary><c>witnessmark sheets import FILE</c>: a sheet into the shop's data folder, as the next revision when it is known.</summary>
internal static class ImportSheet
{
    public static Command Create()
    {
        var file = new Argument<FileInfo>("FILE") { Description = "the figure sheet; its name is the sheet's" };
        var data = SheetsCommand.Data();
        var by = new Option<string>("--by") { Description = "who takes it in", Required = true };
        var why = new Option<string>("--why") { Description = "why, in a sentence", Required = true };
        var import = new Command(
            "import",
            "Take a figure sheet into a shop. The revision before is kept. Ends with 0 taken in or nothing new, 2 with mistakes."
        )
        {
            file,
            data,
            by,
            why,
        };
        import.SetAction(parsed =>
            Run(
                parsed.GetRequiredValue(file),
                new(parsed.GetRequiredValue(data)),
                parsed.GetRequiredValue(by),
                parsed.GetRequiredValue(why)
            )
        );
        return import;
    }

    private static int Run(FileInfo file, DataFolder data, string by, string why)
    {
        if (!file.Exists)
            return Refused([new(file.Name, 1, 1, "no such file", "a figure sheet")]);
        var name = Path.GetFileNameWithoutExtension(file.Name);
        var workbench = data.Workbench();
        var known = SheetFolder.Newest(workbench, name);
        var (next, mistakes) = SheetIntake.Take(
            known,
            new(SheetFolder.NameOf(name), File.ReadAllText(file.FullName)),
            by,
            DateOnly.FromDateTime(DateTime.Now),
            why
        );
        if (next is null)
            return mistakes.Count > 0 ? Refused(mistakes) : Said($"{name}: nothing differs from what the shop has.");
        return Put(data, workbench, known, next);
    }

    private static int Put(DataFolder data, IReadOnlyList<SourceText> workbench, SourceText? known, SourceText next)
    {
        var before = known is null ? null : FigureSheets.Read(known).Sheet!;
        var (bench, mistakes) = WorkbenchFiles.Read(SheetShelf.With(workbench, before, next));
        if (bench is null)
            return Refused(mistakes);
        SheetFolder.Put(data, before, next);
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
