using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.FinalDrive;

/// <summary>The two sprockets of a chain drive.</summary>
/// <param name="FrontTeeth">Teeth of the driving sprocket, 5 or more.</param>
/// <param name="RearTeeth">Teeth of the driven sprocket, 5 or more.</param>
/// <param name="Pitch">Pitch of the chain, more than zero.</param>
public readonly record struct Sprockets(int FrontTeeth, int RearTeeth, Length Pitch)
{
    /// <summary>The pitch of the chains whose number begins with 5: 5/8 inch (ISO 606, 10A and 10B).</summary>
    public static readonly Length FiveEighthsInch = new(15.875);

    /// <summary>z·p/2π in mm: the arc on which a wrapped chain measures as long as its links.</summary>
    internal double FrontRadius => Radius(FrontTeeth);

    /// <summary>z·p/2π in mm.</summary>
    internal double RearRadius => Radius(RearTeeth);

    // Not p/(2 sin(π/z)), the pitch circle: chords between links are shorter than its arc, which adds 1.1 mm to a loop.
    private double Radius(int teeth) => teeth * Pitch.Millimetres / (2 * Math.PI);
}
