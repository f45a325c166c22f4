using Witnessmark.Bench.Machines;
using Witnessmark.Paper.Pdf;

namespace Witnessmark.Paper.Labels;

/// <summary>A label that shops can buy.</summary>
/// <param name="Name">As people ask for it.</param>
/// <param name="Width">In mm.</param>
/// <param name="Height">In mm.</param>
/// <param name="Sheet">The sheet that it comes on; null: one by one from a roll.</param>
public sealed record LabelSize(string Name, double Width, double Height, LabelGrid? Sheet = null)
{
    /// <summary>All of them. A8 is ISO 216's 52 mm × 74 mm, lying; the others are common sizes of label makers, from memory.</summary>
    public static IReadOnlyList<LabelSize> All { get; } =
    [new("A8", 74, 52), new("62x29", 62, 29), new("70x36", 70, 36, new(PaperSize.A4, 3, 8)), new("4x2in", 101.6, 50.8)];

    /// <summary>The size of a name, or null.</summary>
    public static LabelSize? Named(string name) =>
        All.FirstOrDefault(s => s.Name.Equals(name, StringComparison.OrdinalIgnoreCase));

    /// <summary>What a workshop sticks on.</summary>
    public static LabelSize Of(Workshop workshop) => Named(workshop.Label)!;

    /// <summary>The names, for people.</summary>
    public static string Names => string.Join(", ", All.Select(s => s.Name));

    /// <summary>Millimetres in points of 1/72 inch.</summary>
    internal static double Points(double millimetres) => millimetres / 25.4 * 72;
}

/// <summary>A sheet of labels without gaps, in the middle of the paper.</summary>
/// <param name="Paper">The paper.</param>
/// <param name="Columns">Labels side by side.</param>
/// <param name="Rows">Labels one under the other.</param>
public sealed record LabelGrid(PaperSize Paper, int Columns, int Rows)
{
    /// <summary>How many there are.</summary>
    public int Count => Columns * Rows;
}
