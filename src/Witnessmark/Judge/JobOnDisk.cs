using Witnessmark.Bench.JobFiles;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Photographs;
using Witnessmark.Bench.Toml;

namespace Witnessmark.Judge;

/// <summary>A job file with the workshop's files that it names.</summary>
internal static class JobOnDisk
{
    /// <summary>The state of the job after each of its entries, or every mistake in its files. Mistakes name files as they were given.</summary>
    /// <param name="file">The job file.</param>
    /// <param name="pictures">Takes the photographs that it names, by hash.</param>
    public static (
        IReadOnlyList<JobState>? Steps,
        Workbench? Bench,
        JobHeader? Header,
        IReadOnlyList<Mistake> Mistakes
    ) Read(FileInfo file, IDictionary<string, byte[]> pictures)
    {
        var mistakes = new Mistakes();
        var name = Path.GetRelativePath(Directory.GetCurrentDirectory(), file.FullName);
        if (!file.Exists)
            return Wrong(mistakes, name, "there is no such file", "the path of a job file");
        var toml = TomlFile.Read(new(name, File.ReadAllText(file.FullName)), mistakes);
        if (toml.Torn)
            return (null, null, null, mistakes.Sorted());
        var header = JobHeader.Read(toml.Root);
        if (mistakes.Count > 0)
            return (null, null, null, mistakes.Sorted());
        var sources = Sources(header, file.Directory!.FullName, toml, mistakes);
        if (mistakes.Count > 0)
            return (null, null, null, mistakes.Sorted());
        var (bench, wrong) = WorkbenchFiles.Read(sources);
        if (bench is null)
            return (null, null, null, wrong);
        var entries = JobFile.Entries(toml.Root, header, bench, path => Picture(file, path, pictures));
        return mistakes.Count > 0
            ? (null, null, null, mistakes.Sorted())
            : (
                [.. Enumerable.Range(1, entries.Count).Select(n => JobFold.Of(header.Number, entries.Take(n), bench))],
                bench,
                header,
                []
            );
    }

    /// <summary>The last state of each earlier visit that a job file names, or every mistake in the first file that has some.</summary>
    public static (IReadOnlyList<JobState>? Visits, IReadOnlyList<Mistake> Mistakes) Earlier(
        FileInfo file,
        JobHeader header
    )
    {
        List<JobState> visits = [];
        foreach (var earlier in header.Earlier)
        {
            var path = Path.GetFullPath(earlier, file.Directory!.FullName);
            var (visit, _, _, wrong) = Read(new(path), new Dictionary<string, byte[]>());
            if (visit is null)
                return (null, wrong);
            visits.Add(visit[^1]);
        }
        return (visits, []);
    }

    /// <summary>The bytes of a photograph that the job file names, or null when there is no such file.</summary>
    private static byte[]? Picture(FileInfo job, string path, IDictionary<string, byte[]> pictures)
    {
        var whole = Path.GetFullPath(path, job.Directory!.FullName);
        if (!File.Exists(whole))
            return null;
        var file = File.ReadAllBytes(whole);
        if (StoredPicture.Of(file).Value is { } stored)
            pictures[stored.Picture.Sha256] = stored.Bytes;
        return file;
    }

    internal static List<SourceText> Sources(JobHeader header, string from, TomlFile toml, Mistakes mistakes)
    {
        var files = toml.Root.Table("files");
        var shop = Path.GetFullPath(header.Shop, from);
        var sheets = Path.GetFullPath(header.Sheets, from);
        var book = header.Book is { } own
            ? Path.GetFullPath(own, from)
            : Path.Combine(AppContext.BaseDirectory, "book");
        if (!File.Exists(shop))
            files.Wrong("shop", $"there is no file \"{header.Shop}\"", "the path of shop.toml from this file");
        if (!Directory.Exists(sheets))
            files.Wrong(
                "sheets",
                $"there is no folder \"{header.Sheets}\"",
                "the folder of the figure sheets from this file"
            );
        if (!Directory.Exists(book))
            files.Wrong(
                "book",
                $"there is no folder \"{header.Book ?? book}\"",
                "the folder of the bench book from this file"
            );
        var ownBook = header.OwnBook is { } above ? Path.GetFullPath(above, from) : null;
        if (ownBook is not null && !Directory.Exists(ownBook))
            files.Wrong(
                "own-book",
                $"there is no folder \"{header.OwnBook}\"",
                "the folder of the shop's own book from this file"
            );
        if (mistakes.Count > 0)
            return [];
        return
        [
            Text(shop),
            .. InFolder(sheets, "sheets"),
            .. InFolder(book, "book"),
            .. ownBook is null ? [] : InFolder(ownBook, "own-book"),
        ];
    }

    private static SourceText Text(string path) => new(Path.GetFileName(path), File.ReadAllText(path));

    private static IEnumerable<SourceText> InFolder(string folder, string kind) =>
        Directory
            .GetFiles(folder, "*.toml")
            .Order(StringComparer.Ordinal)
            .Select(path => new SourceText($"{kind}/{Path.GetFileName(path)}", File.ReadAllText(path)));

    private static (IReadOnlyList<JobState>?, Workbench?, JobHeader?, IReadOnlyList<Mistake>) Wrong(
        Mistakes mistakes,
        string name,
        string found,
        string right
    )
    {
        mistakes.Add(new(name, 1, 1), found, right);
        return (null, null, null, mistakes.Sorted());
    }
}
