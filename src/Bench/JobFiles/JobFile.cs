using System.Globalization;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Record;
using Witnessmark.Bench.Toml;

namespace Witnessmark.Bench.JobFiles;

/// <summary>A whole job as a file people write: the head, the findings, then the steps in the order they were taken.</summary>
public static class JobFile
{
    /// <summary>The device that a job file counts as.</summary>
    public const string Device = "job-file";

    /// <summary>The entries of the job; what is wrong with the file goes to the mistakes, all of it at once.</summary>
    /// <param name="root">The file.</param>
    /// <param name="header">Its head.</param>
    /// <param name="bench">The workbench.</param>
    /// <param name="pictures">The bytes of a photograph by its path from the job file; null when there is none.</param>
    public static IReadOnlyList<Entry> Entries(
        TomlTable root,
        JobHeader header,
        Workbench bench,
        Func<string, byte[]?> pictures
    )
    {
        var job = root.Table("job");
        var machine = bench.Workshop.Machines.GetValueOrDefault(header.Machine);
        if (machine is null && header.Machine.Length > 0)
            job.Wrong(
                "machine",
                $"there is no machine \"{header.Machine}\" in the shop",
                Nearest.InWords(header.Machine, [.. bench.Workshop.Machines.Keys])
            );
        var purpose = bench.Book.Purposes.ContainsKey(header.Purpose);
        if (!purpose && header.Purpose.Length > 0)
            job.Wrong(
                "purpose",
                $"there is no purpose \"{header.Purpose}\" in the book",
                Nearest.InWords(header.Purpose, [.. bench.Book.Purposes.Keys])
            );
        var drafts = new Drafts(header, bench.Workshop.Id);
        if (machine is null || !purpose || bench.Newest(machine.Sheet) is not { } sheet)
        {
            root.NoOtherKeys();
            return [];
        }
        var plan = bench.Plan(header.Purpose, sheet, machine);
        drafts.Add(
            EntryKind.Arrival,
            EntryBody.Arrival(
                machine.Id,
                sheet.Id,
                sheet.Revision,
                header.Purpose,
                plan,
                header.Promised,
                known: machine,
                secondCheck: bench.Workshop.SecondCheck.In(bench.Book)
            )
        );
        if (header.PromisedAt is { } promised)
            drafts.Add(EntryKind.Promise, EntryBody.Promise(promised));
        List<Book.Point> points = [.. plan.Select(p => bench.Book.Points[p.Point])];
        var found = new JobFindings(
            bench,
            id => bench.HasPoint(bench.Book.Points[id], sheet, machine),
            points,
            drafts,
            pictures
        );
        foreach (var finding in root.TableList("findings"))
            found.Take(finding);
        var given = new GivenSteps(bench, sheet, drafts, pictures);
        foreach (var step in root.TableList("steps"))
            JobStep.Read(step, points, bench, machine, sheet, given, header.Day, drafts);
        root.NoOtherKeys();
        return drafts.Sealed;
    }
}

/// <summary>Numbers and seals facts as they come out of a job file.</summary>
internal sealed class Drafts(JobHeader header, string shop)
{
    private readonly List<Entry> entries = [];

    public IReadOnlyList<Entry> Sealed => entries;

    /// <summary>Who worked on the job.</summary>
    public string Technician => header.Technician;

    /// <summary>Adds an entry, of the job's technician unless somebody else is named.</summary>
    public void Add(string kind, System.Text.Json.JsonElement body, string? by = null)
    {
        var seq = entries.Count + 1;
        var draft = new EntryDraft(
            string.Create(CultureInfo.InvariantCulture, $"{header.Number}-{seq}"),
            shop,
            header.Number,
            kind,
            body,
            null,
            null,
            header.Day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
            by ?? header.Technician
        );
        entries.Add(Record.Entries.Sealed(draft, JobFile.Device, 1, seq, entries.LastOrDefault()?.Hash));
    }
}
