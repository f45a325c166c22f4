using Witnessmark.Bench.Day;
using Witnessmark.Bench.JobFiles;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Toml;
using Witnessmark.Judge;
using Witnessmark.Ledger;
using Witnessmark.Ledger.Sqlite;
using Witnessmark.Serve;

namespace Witnessmark.Day;

/// <summary>The question of a day from a file, or from a shop's ledger.</summary>
internal static class DayOnDisk
{
    /// <summary>From <c>DAY.toml</c> with the workshop's files that it names.</summary>
    public static (DayQuestion? Question, IReadOnlyList<string> Mistakes) OfFile(FileInfo file, string? at)
    {
        var mistakes = new Mistakes();
        var name = Path.GetRelativePath(Directory.GetCurrentDirectory(), file.FullName);
        if (at is not null)
            return (null, ["--at goes with a folder; a file says it under [day] now."]);
        if (!file.Exists)
            return (null, [$"{name}: there is no such file or folder."]);
        var toml = TomlFile.Read(new(name, File.ReadAllText(file.FullName)), mistakes);
        if (toml.Torn)
            return (null, Said(mistakes));
        var files = JobHeader.ReadFiles(toml.Root.Table("files"));
        var sources = mistakes.Count > 0 ? [] : JobOnDisk.Sources(files, file.Directory!.FullName, toml, mistakes);
        if (mistakes.Count > 0)
            return (null, Said(mistakes));
        var (bench, wrong) = WorkbenchFiles.Read(sources);
        if (bench is null)
            return (null, [.. wrong.Select(m => $"{m}")]);
        var question = DayFile.Read(toml.Root, bench);
        return mistakes.Count > 0 ? (null, Said(mistakes)) : (question, []);
    }

    /// <summary>From a data folder: the jobs that are open in its ledger.</summary>
    public static (DayQuestion? Question, IReadOnlyList<string> Mistakes) OfShop(string folder, string? at)
    {
        DateTime? moment = at is null ? DateTime.Now : ShopTime.Read(at);
        if (moment is not { } now)
            return (null, [$"--at {at}: a moment such as 2026-11-26T08:00 is allowed."]);
        var data = new DataFolder(folder);
        var (bench, mistakes) = WorkbenchFiles.Read(data.Workbench());
        if (bench is null)
            return (null, [.. mistakes.Select(m => $"{m}")]);
        if (!File.Exists(data.In("ledger.db")))
            return (null, [$"{folder}: there is no ledger.db in it."]);
        try
        {
            var (question, missing) = DayOfJobs.Of(
                bench,
                OpenJobs.Of(SqliteLedger.Open(data.Path, TimeProvider.System), bench),
                now
            );
            return (question, missing is null ? [] : [missing]);
        }
        catch (LedgerUnavailable why)
        {
            return (null, [why.Message]);
        }
    }

    private static string[] Said(Mistakes mistakes) => [.. mistakes.Sorted().Select(m => $"{m}")];
}
