using System.CommandLine;
using Witnessmark.Bench.Machines;
using Witnessmark.Calc;
using Witnessmark.Judge;
using Witnessmark.Languages;
using Witnessmark.Paper.Findings;
using Witnessmark.Paper.Pdf;
using Witnessmark.Papers;

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
        var paper = new Option<string?>("--paper") { Description = "A4 or Letter; left out: as shop.toml says." };
        paper.AcceptOnlyFromAmong(Papers);
        var reader = new ReaderOptions();
        var command = new Command(
            "estimate",
            "Findings of a job from a file: urgency, estimate, decision; as a sheet for the owner."
        )
        {
            file,
            outFolder,
            paper,
        };
        reader.On(command);
        command.SetAction(parsed =>
            Run(
                JobForPaper.Read(parsed.GetValue(file)!, null),
                parsed.GetValue(outFolder)!,
                parsed.GetValue(paper),
                reader.In(parsed)
            )
        );
        return command;
    }

    private static int Run(JobForPaper? job, DirectoryInfo folder, string? paper, Func<Workshop, Tongue> reader)
    {
        if (job is null)
            return ExitCode.Malformed;
        var state = job.State;
        if (state.Findings.Count == 0)
        {
            Console.Error.WriteLine(
                $"Job {state.Job} has no findings: there is nothing to estimate. A finding stands in the file as [[findings]]; see docs/findings.md."
            );
            return ExitCode.Refused;
        }
        FindingReport.Write(Console.Out, state);
        var size = PaperSize.Named(paper ?? job.Bench.Workshop.Paper)!;
        Console.Out.WriteLine();
        return PaperFile.Put(
            Path.Combine(folder.FullName, $"estimate-{state.Job}.pdf"),
            EstimateSheet.Pdf(state, job.Bench, job.Header.Day, size, job.Small, reader(job.Bench.Workshop)),
            "Estimate sheet"
        );
    }
}
