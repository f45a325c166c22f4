using System.CommandLine;
using Witnessmark.Bench.Machines;
using Witnessmark.Calc;
using Witnessmark.Judge;
using Witnessmark.Languages;
using Witnessmark.Paper.Labels;

namespace Witnessmark.Papers;

/// <summary><c>witnessmark label JOB.toml --kind service|key</c>: a sticker for the machine or a tag for its key.</summary>
internal static class LabelCommand
{
    public static Command Create()
    {
        var file = new Argument<FileInfo>("JOB.toml") { Description = "The job." };
        var kind = new Option<string>("--kind") { Description = "service or key", Required = true };
        kind.AcceptOnlyFromAmong("service", "key");
        var size = new Option<string?>("--size") { Description = $"{LabelSize.Names}; left out: as shop.toml says." };
        size.AcceptOnlyFromAmong([.. LabelSize.All.Select(s => s.Name)]);
        var at = new Option<int>("--at")
        {
            Description = "Which label of the sheet, from 1, row by row.",
            DefaultValueFactory = _ => 1,
        };
        var key = new Option<FileInfo?>("--key") { Description = "Private key (JWK, P-256) that signs the code." };
        var to = new Option<FileInfo?>("--out") { Description = "The PDF; left out: label-KIND-JOB.pdf here." };
        var reader = new ReaderOptions();
        var command = new Command("label", "A sticker with the next service, or a tag for the key, as PDF.")
        {
            file,
            kind,
            size,
            at,
            key,
            to,
        };
        reader.On(command);
        command.SetAction(parsed =>
            Run(
                JobForPaper.Read(parsed.GetValue(file)!, parsed.GetValue(key)),
                parsed.GetValue(kind)!,
                parsed.GetValue(size),
                parsed.GetValue(at),
                parsed.GetValue(to),
                reader.In(parsed)
            )
        );
        return command;
    }

    /// <summary>The kind of a word, or null.</summary>
    internal static LabelKind? KindOf(string word) =>
        word switch
        {
            "service" => LabelKind.Service,
            "key" => LabelKind.Key,
            _ => null,
        };

    private static int Run(
        JobForPaper? job,
        string kind,
        string? size,
        int at,
        FileInfo? to,
        Func<Workshop, Tongue> reader
    )
    {
        if (job is null)
            return ExitCode.Malformed;
        var label = LabelSheet.Pdf(
            KindOf(kind)!.Value,
            size is null ? LabelSize.Of(job.Bench.Workshop) : LabelSize.Named(size)!,
            job.State,
            job.Bench,
            job.Header.Day,
            job.Seal,
            job.Earlier,
            at,
            reader(job.Bench.Workshop)
        );
        if (label.Refusal is { } refusal)
            return JobForPaper.Refused(refusal);
        var path = to?.FullName ?? Path.GetFullPath($"label-{kind}-{job.State.Job}.pdf");
        return PaperFile.Put(path, label.Certain, "Label");
    }
}
