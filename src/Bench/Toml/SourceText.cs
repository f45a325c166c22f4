namespace Witnessmark.Bench.Toml;

/// <summary>A file that somebody wrote, already in memory: this library opens none.</summary>
/// <param name="Name">With its folder, slashes forward: <c>book/final-drive.toml</c>.</param>
/// <param name="Text">All of it.</param>
public sealed record SourceText(string Name, string Text);

/// <summary>Where something stands in a file, both counted from 1.</summary>
public readonly record struct Place(string File, int Line, int Column);
