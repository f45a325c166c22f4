using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Toml;

namespace Witnessmark.Bench.Tests.Book;

/// <summary>The book and the demo workshop as they are shipped, and the same with one line changed.</summary>
internal static class DemoFiles
{
    private static readonly string Root = Path.Combine(AppContext.BaseDirectory, "files");

    public static IReadOnlyList<SourceText> All { get; } =
    [.. In("book", "book/"), .. In("demo", "").Where(s => !s.Name.StartsWith("jobs/"))];

    public static Workbench Bench =>
        WorkbenchFiles.Read(All) is ({ } bench, [])
            ? bench
            : throw new InvalidOperationException("the demo has mistakes");

    public static string Text(string path) => File.ReadAllText(Path.Combine(Root, path)).ReplaceLineEndings("\n");

    /// <summary>What is wrong after one text in one file was replaced; it has to stand there exactly once.</summary>
    public static IReadOnlyList<Mistake> MistakesWith(string file, string old, string replacement)
    {
        var changed = All.Select(s => s.Name == file ? s with { Text = Once(s.Text, old, replacement) } : s);
        var (bench, mistakes) = WorkbenchFiles.Read(changed);
        Assert.Equal(mistakes.Count == 0, bench is not null);
        return mistakes;
    }

    /// <summary>The line, from 1, that a text first stands in after the change.</summary>
    public static int LineOf(string file, string text) =>
        All.Single(s => s.Name == file).Text.Split('\n').Index().First(l => l.Item.Contains(text)).Index + 1;

    private static string Once(string text, string old, string replacement)
    {
        Assert.Equal(2, text.Split(old).Length);
        return text.Replace(old, replacement);
    }

    private static IEnumerable<SourceText> In(string folder, string prefix) =>
        Directory
            .EnumerateFiles(Path.Combine(Root, folder), "*.toml", SearchOption.AllDirectories)
            .Where(f => Path.GetFileName(Path.GetDirectoryName(f)) is not ("jobs" or "campaigns" or "days"))
            .Select(f => new SourceText(
                prefix + Path.GetRelativePath(Path.Combine(Root, folder), f).Replace('\\', '/'),
                File.ReadAllText(f).ReplaceLineEndings("\n")
            ));
}
