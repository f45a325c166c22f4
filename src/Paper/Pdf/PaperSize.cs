using Witnessmark.Bench.Machines;

namespace Witnessmark.Paper.Pdf;

/// <summary>A sheet of paper, upright.</summary>
/// <param name="Name">As people ask for it.</param>
/// <param name="Width">In points of 1/72 inch.</param>
/// <param name="Height">In points.</param>
public sealed record PaperSize(string Name, double Width, double Height)
{
    /// <summary>ISO 216: 210 mm × 297 mm.</summary>
    public static PaperSize A4 { get; } = new("A4", 595, 842);

    /// <summary>ANSI/ASME Y14.1, size A: 8.5 in × 11 in.</summary>
    public static PaperSize Letter { get; } = new("Letter", 612, 792);

    /// <summary>What a workshop prints on.</summary>
    public static PaperSize Of(Workshop workshop) => Named(workshop.Paper)!;

    /// <summary>The size of a name, or null.</summary>
    public static PaperSize? Named(string name) =>
        ((PaperSize[])[A4, Letter]).FirstOrDefault(s => s.Name.Equals(name, StringComparison.OrdinalIgnoreCase));
}
