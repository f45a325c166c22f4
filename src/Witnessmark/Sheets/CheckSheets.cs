using System.CommandLine;
using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Figures.Plausibility;
using Witnessmark.Bench.Toml;
using Witnessmark.Calc;

namespace Witnessmark.Sheets;

/// <summary><c>witnessmark sheets check FILE…</c>: all mistakes of all files at once, then what physics makes one doubt.</summary>
internal static class CheckSheets
{
    public static Command Create()
    {
        var files = new Argument<FileInfo[]>("FILE")
        {
            Description = "figure sheets (TOML)",
            Arity = ArgumentArity.OneOrMore,
        };
        var check = new Command(
            "check",
            "Check figure sheets. Ends with 0 clean, 2 with mistakes; doubts do not count."
        )
        {
            files,
        };
        check.SetAction(parsed => Run(parsed.GetRequiredValue(files)));
        return check;
    }

    private static int Run(FileInfo[] files)
    {
        List<Mistake> mistakes = [];
        foreach (var file in files)
            mistakes.AddRange(One(file));
        foreach (var mistake in mistakes)
            Console.Error.WriteLine(mistake);
        return mistakes.Count == 0 ? ExitCode.Ok : ExitCode.Malformed;
    }

    private static IReadOnlyList<Mistake> One(FileInfo file)
    {
        if (!file.Exists)
            return [new(file.Name, 1, 1, "no such file", "a figure sheet")];
        var (sheet, mistakes) = FigureSheets.Read(new(file.Name, File.ReadAllText(file.FullName)));
        if (sheet is null)
            return mistakes;
        Console.WriteLine($"{file.Name}: {sheet.Name}, revision {sheet.Revision}, {sheet.Figures.Count} figures.");
        foreach (var doubt in Doubts.Of(sheet))
            Console.WriteLine($"  Look again at {doubt.Figure}: {doubt.Words}.");
        return [];
    }
}
