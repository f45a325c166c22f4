using Witnessmark.Tests.Calc;
using Witnessmark.Tests.Serve;

namespace Witnessmark.Tests.Judge;

/// <summary>A copy of the demo's files with one text in the job changed, judged by the real program.</summary>
internal sealed class JobOnPaper : IDisposable
{
    private readonly TempFolder _folder = new();

    public JobOnPaper(params (string Old, string New)[] changes)
    {
        foreach (var kind in new[] { "book", "demo" })
        foreach (
            var file in Directory.EnumerateFiles(
                Path.Combine(AppContext.BaseDirectory, kind),
                "*.toml",
                SearchOption.AllDirectories
            )
        )
        {
            var copy = Path.Combine(_folder.Path, Path.GetRelativePath(AppContext.BaseDirectory, file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy);
        }
        var text = File.ReadAllText(JobFile);
        foreach (var (old, @new) in changes)
        {
            Assert.Contains(old, text);
            text = text.Replace(old, @new);
        }
        File.WriteAllText(JobFile, text);
    }

    public string JobFile => Path.Combine(_folder.Path, "demo", "jobs", "412.toml");

    public string Out => Path.Combine(_folder.Path, "out");

    public RealProgram.Ended Judged() => RealProgram.Run("", "judge", JobFile, "--out", Out);

    /// <summary>The line, from 1, that a text first stands in.</summary>
    public int LineOf(string text) => File.ReadLines(JobFile).Index().First(l => l.Item.Contains(text)).Index + 1;

    public void Dispose() => _folder.Dispose();
}
