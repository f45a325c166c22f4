using System.CommandLine;
using Witnessmark.Bench.Jobs;
using Witnessmark.Calc;
using Witnessmark.Keys;
using Witnessmark.Paper.Handover;
using Witnessmark.Paper.LogBook;
using Witnessmark.Paper.Pdf;

namespace Witnessmark.Judge;

/// <summary><c>witnessmark judge JOB.toml --out DIR</c>: a job as a file, judged on the terminal and put on paper.</summary>
internal static class JudgeCommand
{
    /// <summary>Something holds the machine.</summary>
    public const int Held = 4;

    public static Command Create()
    {
        var file = new Argument<FileInfo>("JOB.toml")
        {
            Description = "The job: machine, purpose and the steps in the order they were taken.",
        };
        var outFolder = new Option<DirectoryInfo?>("--out")
        {
            Description = "Folder for the handover sheet (PDF) and the log book.",
        };
        var key = new Option<FileInfo?>("--key") { Description = "Private key (JWK, P-256) that signs the log book." };
        var paper = new Option<string>("--paper") { Description = "A4 or Letter.", DefaultValueFactory = _ => "A4" };
        paper.AcceptOnlyFromAmong("A4", "Letter");
        var command = new Command("judge", "Judge a job from a file: verdicts, corrections, holds, handover sheet.")
        {
            file,
            outFolder,
            key,
            paper,
        };
        command.SetAction(parsed =>
            Run(parsed.GetValue(file)!, parsed.GetValue(outFolder), parsed.GetValue(key), parsed.GetValue(paper)!)
        );
        return command;
    }

    private static int Run(FileInfo file, DirectoryInfo? outFolder, FileInfo? key, string paper)
    {
        ShopSeal? seal;
        try
        {
            seal = key is null ? null : ShopKey.Read(File.ReadAllText(key.FullName)).Seal;
        }
        catch (Exception wrong) when (wrong is FormatException or IOException or UnauthorizedAccessException)
        {
            Console.Error.WriteLine($"{key!.Name}: {wrong.Message}");
            return ExitCode.Malformed;
        }
        var pictures = new Dictionary<string, byte[]>(StringComparer.Ordinal);
        var (steps, bench, header, mistakes) = JobOnDisk.Read(file, pictures);
        if (steps is null)
        {
            foreach (var mistake in mistakes)
                Console.Error.WriteLine(mistake);
            Console.Error.WriteLine(
                mistakes.Count == 1
                    ? "1 mistake; nothing was judged."
                    : $"{mistakes.Count} mistakes; nothing was judged."
            );
            return ExitCode.Malformed;
        }
        JobReport.Write(Console.Out, steps);
        var state = steps[^1];
        if (outFolder is not null)
            Put(outFolder, state, bench!, header!.Day, PaperSize.Named(paper)!, seal, pictures);
        return state.MayGo ? 0 : Held;
    }

    private static void Put(
        DirectoryInfo folder,
        JobState state,
        Workbench bench,
        DateOnly day,
        PaperSize size,
        ShopSeal? seal,
        IReadOnlyDictionary<string, byte[]> pictures
    )
    {
        folder.Create();
        var sheet = Path.Combine(folder.FullName, $"handover-{state.Job}.pdf");
        var book = Path.Combine(folder.FullName, $"log-book-{state.Job}.json");
        var pdf = HandoverSheet.Pdf(state, bench, day, size, seal, pictures: pictures.GetValueOrDefault);
        File.WriteAllBytes(sheet, pdf);
        File.WriteAllText(book, LogBookFile.Write(state, bench, seal));
        Console.Out.WriteLine();
        Console.Out.WriteLine($"Handover sheet: {sheet}");
        Console.Out.WriteLine($"Log book:       {book}");
    }
}
