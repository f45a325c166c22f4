using Witnessmark.Bench.Planning;
using Witnessmark.Bench.Toml;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.JobFiles;

/// <summary>The head of a job file: where the workshop's files lie and what the job is.</summary>
/// <param name="Shop">Path of shop.toml, from the job file.</param>
/// <param name="Sheets">Folder of the figure sheets, from the job file.</param>
/// <param name="Book">Folder of the bench book from the job file, or null for the one that comes with the program.</param>
/// <param name="OwnBook">Folder of the shop's own book, which overrides it point by point, or null.</param>
/// <param name="Number">The job's number.</param>
/// <param name="Machine">Id of the machine in shop.toml.</param>
/// <param name="Purpose">A purpose of the bench book.</param>
/// <param name="Technician">Who worked.</param>
/// <param name="Day">When.</param>
/// <param name="Promised">When the machine is to be collected, or null.</param>
/// <param name="Kilometres">What the odometer showed on arrival, or null.</param>
/// <param name="Earlier">Paths of the job files of earlier visits, from the job file.</param>
public sealed record JobHeader(
    string Shop,
    string Sheets,
    string? Book,
    string? OwnBook,
    string Number,
    string Machine,
    string Purpose,
    string Technician,
    DateOnly Day,
    string? Promised,
    double? Kilometres,
    IReadOnlyList<string> Earlier
)
{
    /// <summary>When it is promised by the shop's clock, or null.</summary>
    public DateTime? PromisedAt { get; init; }

    /// <summary>Reads the table <c>[files]</c> alone, for a file that is no job.</summary>
    public static JobHeader ReadFiles(TomlTable files)
    {
        var header = new JobHeader(
            files.Text("shop"),
            files.Text("sheets"),
            files.TextOrNothing("book"),
            files.TextOrNothing("own-book"),
            "",
            "",
            "",
            "",
            default,
            null,
            null,
            []
        );
        files.NoOtherKeys();
        return header;
    }

    /// <summary>Reads the head; what is wrong with it goes to the mistakes.</summary>
    public static JobHeader Read(TomlTable root)
    {
        var files = root.Table("files");
        var job = root.Table("job");
        var header = new JobHeader(
            files.Text("shop"),
            files.Text("sheets"),
            files.TextOrNothing("book"),
            files.TextOrNothing("own-book"),
            job.Text("number"),
            job.Text("machine"),
            job.Text("purpose"),
            job.Text("technician"),
            job.DayOrNothing("day") ?? Missing(job),
            job.TextOrNothing("promised"),
            Distance(job),
            files.Texts("earlier")
        )
        {
            PromisedAt = job.MomentOrNothing("promised-at"),
        };
        if (
            header.Promised is { } promised
            && Promise.Read(promised, header.Day)?.IsPast(header.Day.ToDateTime(default)) == true
        )
            job.Wrong("promised", $"\"{promised}\" lies before the day of the job", "the day of the job or later");
        files.NoOtherKeys();
        job.NoOtherKeys();
        return header;
    }

    private static double? Distance(TomlTable job)
    {
        var distance = job.QuantityOrNothing("distance", Dimension.Length);
        if (distance is { Value: < 0 })
            job.Wrong("distance", $"\"{distance}\"", "zero or more");
        return distance?.In(UnitTable.Named("km")).Value;
    }

    private static DateOnly Missing(TomlTable job)
    {
        if (!job.Has("day"))
            job.Wrong("day", "\"day\" is missing", "day = a day such as 2026-03-31, without quotes");
        return default;
    }
}
