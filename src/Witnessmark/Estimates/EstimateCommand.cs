using System.CommandLine;
using Witnessmark.Bench.Jobs;
using Witnessmark.Calc;
using Witnessmark.Judge;
using Witnessmark.Paper.Findings;
using Witnessmark.Paper.Pdf;

namespace Witnessmark.Estimates;

/// <summary><c>witnessmark estimate JOB.toml --out DIR</c>: the findings of a job with what putting them right is expected to cost, for the owner.</summary>
internal static class EstimateCommand
{
    private static readonly string[] Papers = ["A4", "a4", "Letter", "letter"];

    public static Command Create()
    {
        var file = new Argument<FileInfo>("JOB.toml") { Description = "The job, with its [[findings]]." };
        var outFolder = new Option<DirectoryInfo>("--out")
        {
            Description = "Folder for the estimate sheet (PDF).",
            Required = true,
        };
        var paper = new Option<string>("--paper") { Description = "A4 or Letter.", DefaultValueFactory = _ => "A4" };
        paper.AcceptOnlyFromAmong(Papers);
        var command = new Command(
            "estimate",
            "Findings of a job from a file: urgency, estimate, decision; as a sheet for the owner."
        )
        {
            file,
            outFolder,
            paper,
        };
        command.SetAction(parsed =>
            Run(parsed.GetValue(file)!, parsed.GetValue(outFolder)!, PaperSize.Named(parsed.GetValue(paper)!)!)
        );
        return command;
    }

    private static int Run(FileInfo file, DirectoryInfo folder, PaperSize size)
    {
        var pictures = new Dictionary<string, byte[]>(StringComparer.Ordinal);
        var (steps, bench, header, mistakes) = JobOnDisk.Read(file, pictures);
        if (steps is null)
        {
            foreach (var mistake in mistakes)
                Console.Error.WriteLine(mistake);
            Console.Error.WriteLine("Nothing was printed.");
            return ExitCode.Malformed;
        }
        var state = steps[^1];
        if (state.Findings.Count == 0)
        {
            Console.Error.WriteLine(
                $"Job {state.Job} has no findings: there is nothing to estimate. A finding stands in the file as [[findings]]; see docs/findings.md."
            );
            return ExitCode.Refused;
        }
        FindingReport.Write(Console.Out, state);
        folder.Create();
        var sheet = Path.Combine(folder.FullName, $"estimate-{state.Job}.pdf");
        File.WriteAllBytes(sheet, EstimateSheet.Pdf(state, bench!, header!.Day, size, pictures.GetValueOrDefault));
        Console.Out.WriteLine();
        Console.Out.WriteLine($"Estimate sheet: {sheet}");
        return ExitCode.Ok;
    }
}
