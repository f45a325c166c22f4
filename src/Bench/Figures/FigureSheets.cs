using Witnessmark.Bench.Toml;

namespace Witnessmark.Bench.Figures;

/// <summary>Reads a figure sheet on its own, without the workshop around it.</summary>
public static class FigureSheets
{
    /// <summary>The sheet, or all mistakes in it by line and column.</summary>
    public static (FigureSheet? Sheet, IReadOnlyList<Mistake> Mistakes) Read(SourceText source)
    {
        var mistakes = new Mistakes();
        var file = TomlFile.Read(source, mistakes);
        var sheet = file.Torn ? null : FigureSheetFile.Read(file).Sheet;
        return mistakes.Count > 0 ? (null, mistakes.Sorted()) : (sheet, []);
    }
}
