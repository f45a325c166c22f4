using System.CommandLine;
using System.Text;
using Witnessmark.Bench.Machines;
using Witnessmark.Calc;
using Witnessmark.Judge;
using Witnessmark.Languages;
using Witnessmark.Paper.Record;

namespace Witnessmark.Papers;

/// <summary><c>witnessmark record JOB.toml --out FILE.html</c>: the record of a job for its owner, one page that needs nothing else.</summary>
internal static class RecordCommand
{
    public static Command Create()
    {
        var file = new Argument<FileInfo>("JOB.toml") { Description = "The job." };
        var key = new Option<FileInfo?>("--key") { Description = "Private key (JWK, P-256) that signs the code." };
        var to = new Option<FileInfo>("--out") { Description = "The page (HTML).", Required = true };
        var reader = new ReaderOptions();
        var command = new Command("record", "The record of a job for its owner: one HTML file that needs nothing else.")
        {
            file,
            key,
            to,
        };
        reader.On(command);
        command.SetAction(parsed =>
            Run(JobForPaper.Read(parsed.GetValue(file)!, parsed.GetValue(key)), parsed.GetValue(to)!, reader.In(parsed))
        );
        return command;
    }

    private static int Run(JobForPaper? job, FileInfo to, Func<Workshop, Tongue> reader)
    {
        if (job is null)
            return ExitCode.Malformed;
        var page = RecordPage.Html(
            job.State,
            job.Bench,
            job.Header.Day,
            job.Seal,
            job.Small,
            job.Earlier,
            reader(job.Bench.Workshop)
        );
        return PaperFile.Put(to.FullName, Encoding.UTF8.GetBytes(page), "Record");
    }
}
