namespace Witnessmark.Paper.Drawings;

/// <summary>A drawing as data: one geometry for every pen.</summary>
/// <param name="Width">Width of the surface; x grows to the right.</param>
/// <param name="Height">Height of the surface; y grows downwards.</param>
/// <param name="Label">The drawing in one sentence, for people who do not see it.</param>
/// <param name="Shapes">From the back to the front.</param>
public sealed record Drawing(double Width, double Height, Sentence Label, IReadOnlyList<Shape> Shapes);

/// <summary>What can be on a drawing.</summary>
public abstract record Shape;

/// <summary>A straight line with flat ends.</summary>
public sealed record Line(double X1, double Y1, double X2, double Y2, Ink Ink, double Width, bool Dashed = false)
    : Shape;

/// <summary>A rectangle, filled, outlined or both.</summary>
public sealed record Box(
    double X,
    double Y,
    double Width,
    double Height,
    double Radius,
    Ink? Fill,
    Ink? Edge = null,
    double EdgeWidth = 0,
    double Opacity = 1
) : Shape;

/// <summary>A circle, filled, outlined or both.</summary>
public sealed record Disc(double X, double Y, double Radius, Ink? Fill, Ink? Edge = null, double EdgeWidth = 0) : Shape;

/// <summary>A polygon, filled.</summary>
public sealed record Patch(IReadOnlyList<Spot> Corners, Ink Fill) : Shape;

/// <summary>A closed curve of short straight pieces, outlined.</summary>
public sealed record Loop(IReadOnlyList<Spot> Corners, Ink Edge, double EdgeWidth) : Shape;

/// <summary>Text on a baseline, centred on <paramref name="X"/> or starting there.</summary>
public sealed record Words(
    double X,
    double Y,
    Sentence Text,
    double Size,
    Ink Ink,
    bool Bold = false,
    bool Centred = true
) : Shape
{
    /// <summary>Width that is kept free for it. A digit of the font is 0.632 em wide, letters on average less.</summary>
    public double Room => RoomFor(Text.ToString(), Size);

    /// <summary>Where it begins.</summary>
    public double Left => Centred ? X - Room / 2 : X;

    /// <summary>Where it ends.</summary>
    public double Right => Left + Room;

    /// <summary>Width that is kept free for a text.</summary>
    public static double RoomFor(string text, double size) => text.Length * size * 0.64;
}

/// <summary>A place on the surface.</summary>
public readonly record struct Spot(double X, double Y);

/// <summary>The inks; each pen knows what colour they are on its own ground.</summary>
public enum Ink
{
    /// <summary>Text and needles.</summary>
    Full,

    /// <summary>Second text.</summary>
    Soft,

    /// <summary>Metal.</summary>
    Steel,

    /// <summary>Metal, lighter.</summary>
    SteelLight,

    /// <summary>The ground under the drawing.</summary>
    Card,

    /// <summary>Paint of a mark that stands.</summary>
    Mark,

    /// <summary>Outside.</summary>
    Outside,

    /// <summary>Unproven.</summary>
    Unproven,
}
