using Witnessmark.Bench.Day;
using Witnessmark.Bench.JobFiles;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Toml;
using Witnessmark.Groups;
using Witnessmark.Judge;
using Witnessmark.Ledger;
using Witnessmark.Serve;
using Witnessmark.Times;

namespace Witnessmark.Day;

/// <summary>What a day is asked.</summary>
/// <param name="Question">The question, or null.</param>
/// <param name="NotWhole">Jobs whose kit lacks something.</param>
/// <param name="Mistakes">Why there is no question.</param>
internal sealed record DayAsked(DayQuestion? Question, IReadOnlyList<NotWhole> NotWhole, IReadOnlyList<string> Mistakes)
{
    public static DayAsked Not(params IReadOnlyList<string> mistakes) => new(null, [], mistakes);
}

/// <summary>The question of a day from a file, or from a shop's ledger.</summary>
internal static class DayOnDisk
{
    /// <summary>From <c>DAY.toml</c> with the workshop's files that it names.</summary>
    public static DayAsked OfFile(FileInfo file, string? at)
    {
        var mistakes = new Mistakes();
        var name = Path.GetRelativePath(Directory.GetCurrentDirectory(), file.FullName);
        if (at is not null)
            return DayAsked.Not("--at goes with a folder; a file says it under [day] now.");
        if (!file.Exists)
            return DayAsked.Not($"{name}: there is no such file or folder.");
        var toml = TomlFile.Read(new(name, File.ReadAllText(file.FullName)), mistakes);
        if (toml.Torn)
            return DayAsked.Not(Said(mistakes));
        var files = JobHeader.ReadFiles(toml.Root.Table("files"));
        var sources = mistakes.Count > 0 ? [] : JobOnDisk.Sources(files, file.Directory!.FullName, toml, mistakes);
        if (mistakes.Count > 0)
            return DayAsked.Not(Said(mistakes));
        var (bench, wrong) = WorkbenchFiles.Read(sources);
        if (bench is null)
            return DayAsked.Not([.. wrong.Select(m => $"{m}")]);
        var question = DayFile.Read(toml.Root, bench);
        return mistakes.Count > 0 ? DayAsked.Not(Said(mistakes)) : new(question, [], []);
    }

    /// <summary>From a data folder or a shop of a group: the jobs that are open in its ledger.</summary>
    public static DayAsked OfShop(CommandPlace of, string? at)
    {
        DateTime? moment = at is null ? DateTime.Now : ShopTime.Read(at);
        if (moment is not { } now)
            return DayAsked.Not($"--at {at}: a moment such as 2026-11-26T08:00 is allowed.");
        try
        {
            return of.In(shop => OfShop(of, shop, now));
        }
        catch (LedgerUnavailable why)
        {
            return DayAsked.Not(why.Message);
        }
    }

    private static DayAsked OfShop(CommandPlace of, ShopPlace shop, DateTime now)
    {
        var (bench, mistakes) = of.Bench(shop);
        if (bench is null)
            return DayAsked.Not([.. mistakes.Select(m => $"{m}")]);
        if (shop.LedgerIfThere() is not { } ledger)
            return DayAsked.Not($"{of.Folder}: there is no ledger.db in it.");
        var jobs = OpenJobs.Of(ledger, bench, shop.NotCounting());
        var (question, missing) = DayOfJobs.Of(bench, jobs, now, TimesOnDisk.Learnt(ledger, bench.Book));
        var shelf = shop.StockIfThere()?.Shelf();
        return question is null
            ? DayAsked.Not(missing!)
            : new(question, NotWhole.Of(bench, jobs, shelf, DateOnly.FromDateTime(now)), []);
    }

    private static string[] Said(Mistakes mistakes) => [.. mistakes.Sorted().Select(m => $"{m}")];
}
