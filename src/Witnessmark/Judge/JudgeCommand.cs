using System.CommandLine;
using Witnessmark.Bench.Machines;
using Witnessmark.Calc;
using Witnessmark.Languages;
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
        var paper = new Option<string?>("--paper") { Description = "A4 or Letter; left out: as shop.toml says." };
        paper.AcceptOnlyFromAmong("A4", "Letter");
        var reader = new ReaderOptions();
        var command = new Command("judge", "Judge a job from a file: verdicts, corrections, holds, handover sheet.")
        {
            file,
            outFolder,
            key,
            paper,
        };
        reader.On(command);
        command.SetAction(parsed =>
            Run(
                JobForPaper.Read(parsed.GetValue(file)!, parsed.GetValue(key)),
                parsed.GetValue(outFolder),
                parsed.GetValue(paper),
                reader.In(parsed)
            )
        );
        return command;
    }

    private static int Run(JobForPaper? job, DirectoryInfo? outFolder, string? paper, Func<Workshop, Tongue> reader)
    {
        if (job is null)
            return ExitCode.Malformed;
        JobReport.Write(Console.Out, job.Steps);
        if (outFolder is not null)
            Put(outFolder, job, paper is null ? null : PaperSize.Named(paper), reader(job.Bench.Workshop));
        return job.State.MayGo ? 0 : Held;
    }

    private static void Put(DirectoryInfo folder, JobForPaper job, PaperSize? size, Tongue tongue)
    {
        folder.Create();
        var (state, bench) = (job.State, job.Bench);
        var sheet = Path.Combine(folder.FullName, $"handover-{state.Job}.pdf");
        var book = Path.Combine(folder.FullName, $"log-book-{state.Job}.json");
        var pdf = HandoverSheet.Pdf(state, bench, job.Header.Day, size, job.Seal, null, job.Small, job.Earlier, tongue);
        File.WriteAllBytes(sheet, pdf);
        File.WriteAllText(book, LogBookFile.Write(state, bench, job.Seal));
        Console.Out.WriteLine();
        Console.Out.WriteLine($"Handover sheet: {sheet}");
        Console.Out.WriteLine($"Log book:       {book}");
    }
}
