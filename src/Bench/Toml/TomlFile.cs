using Tomlyn.Parsing;
using Tomlyn.Syntax;

namespace Witnessmark.Bench.Toml;

/// <summary>One TOML file as a tree of our own in which everything knows its place.</summary>
/// <param name="Name">The file's name.</param>
/// <param name="Root">The keys at the top; empty when the file is torn.</param>
/// <param name="Torn">Whether it is no TOML; then nothing of it was taken.</param>
public sealed record TomlFile(string Name, TomlTable Root, bool Torn)
{
    /// <summary>Reads a file; what is wrong with it as TOML is added to the mistakes.</summary>
    public static TomlFile Read(SourceText source, Mistakes mistakes)
    {
        // without Tomlyn's own validation: it stops at the first doubled key, the tree builder finds them all
        var document = SyntaxParser.Parse(source.Text, source.Name, validate: false);
        if (!document.HasErrors)
            return new(source.Name, new TreeBuilder(source.Name, mistakes).Build(document), false);
        foreach (var diagnostic in document.Diagnostics)
            if (diagnostic.Kind == DiagnosticMessageKind.Error)
                mistakes.Add(
                    At(source, diagnostic.Span.Start),
                    Line(source, diagnostic),
                    "TOML: " + diagnostic.Message
                );
        return new(source.Name, new TomlTable(new(source.Name, 1, 1), mistakes), true);
    }

    private static Place At(SourceText source, TextPosition position) =>
        position.Line < 0 ? new(source.Name, 1, 1) : new(source.Name, position.Line + 1, position.Column + 1);

    private static string Line(SourceText source, DiagnosticMessage diagnostic)
    {
        var lines = source.Text.Split('\n');
        var line = diagnostic.Span.Start.Line;
        var text = line >= 0 && line < lines.Length ? lines[line].Trim() : "";
        return text.Length == 0 ? "the file is torn here" : $"\"{(text.Length <= 60 ? text : text[..60] + "…")}\"";
    }
}
