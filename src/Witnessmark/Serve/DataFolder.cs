using Witnessmark.Bench.Toml;

namespace Witnessmark.Serve;

/// <summary>The folder that holds all that a shop has: its ledger, and the files that people edit.</summary>
public sealed class DataFolder(string path)
{
    /// <summary>The whole path.</summary>
    public string Path { get; } = System.IO.Path.GetFullPath(path);

    /// <summary>Whether people have put no file into it yet.</summary>
    public bool IsEmpty => WorkbenchPaths().Count == 0;

    /// <summary>The files of the workbench by name: <c>shop.toml</c>, <c>book/…</c>, <c>own-book/…</c>, <c>sheets/…</c>.</summary>
    public IReadOnlyList<SourceText> Workbench() =>
        [.. WorkbenchPaths().Select(name => new SourceText(name, File.ReadAllText(In(name))))];

    /// <summary>The path of a file in it.</summary>
    public string In(string name) => System.IO.Path.Combine(Path, name);

    private List<string> WorkbenchPaths() =>
        [
            .. new[] { "shop.toml" }.Where(name => File.Exists(In(name))),
            .. new[] { "book", "own-book", "sheets" }
                .Where(folder => Directory.Exists(In(folder)))
                .SelectMany(folder => Directory.GetFiles(In(folder), "*.toml"))
                .Select(file => System.IO.Path.GetRelativePath(Path, file).Replace('\\', '/'))
                .Order(StringComparer.Ordinal),
        ];
}
