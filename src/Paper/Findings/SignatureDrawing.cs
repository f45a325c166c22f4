using Witnessmark.Bench.Findings;
using Witnessmark.Paper.Drawings;

namespace Witnessmark.Paper.Findings;

/// <summary>A signature as it was drawn on the screen.</summary>
public static class SignatureDrawing
{
    private const double Pen = 1.8;

    /// <summary>The strokes.</summary>
    /// <param name="signature">The signature.</param>
    /// <param name="name">Whose it is, for people who do not see it.</param>
    public static Drawing Of(SignaturePath signature, string name) =>
        new(
            SignaturePath.Width,
            SignaturePath.Height,
            $"Signature of {name}",
            [
                .. signature.Strokes.SelectMany(stroke =>
                    stroke.Zip(stroke.Skip(1), (a, b) => new Line(a.X, a.Y, b.X, b.Y, Ink.Full, Pen))
                ),
            ]
        );
}
