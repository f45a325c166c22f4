using QRCoder;
using Witnessmark.Paper.Drawings;

namespace Witnessmark.Paper.Pdf;

/// <summary>A QR code (ISO/IEC 18004) as a drawing, with its quiet zone of four modules.</summary>
internal static class QrDrawing
{
    public static Drawing Of(string text, Sentence label)
    {
        using var generator = new QRCodeGenerator();
        using var code = generator.CreateQrCode(text, QRCodeGenerator.ECCLevel.M, forceUtf8: true);
        var matrix = code.ModuleMatrix;
        return new(matrix.Count, matrix.Count, label, [.. matrix.SelectMany((row, y) => Runs(row, y))]);
    }

    /// <summary>Dark modules of a row in as few boxes as possible, so that no hairline shows between them.</summary>
    private static IEnumerable<Shape> Runs(System.Collections.BitArray row, int y)
    {
        for (var x = 0; x < row.Count; x++)
        {
            var from = x;
            while (x < row.Count && row[x])
                x++;
            if (x > from)
                yield return new Box(from, y, x - from, 1.02, 0, Ink.Full);
        }
    }
}
