namespace Witnessmark.Handbook.Quantities;

/// <summary>Turns of an adjuster; positive tightens, kept in turns.</summary>
/// <param name="Count">The value in turns.</param>
public readonly record struct Turns(double Count) : IQuantity<Turns>
{
    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Turn;

    /// <inheritdoc/>
    public double Base => Count;

    /// <inheritdoc/>
    public static Turns OfBase(double value) => new(value);

    /// <summary>The sum.</summary>
    public static Turns operator +(Turns a, Turns b) => new(a.Count + b.Count);

    /// <summary>The difference.</summary>
    public static Turns operator -(Turns a, Turns b) => new(a.Count - b.Count);

    /// <summary>The opposite.</summary>
    public static Turns operator -(Turns a) => new(-a.Count);

    /// <summary>A multiple.</summary>
    public static Turns operator *(Turns a, double factor) => new(a.Count * factor);

    /// <summary>A multiple.</summary>
    public static Turns operator *(double factor, Turns a) => new(a.Count * factor);

    /// <summary>A fraction.</summary>
    public static Turns operator /(Turns a, double divisor) => new(a.Count / divisor);

    /// <summary>How many times the one goes into the other.</summary>
    public static double operator /(Turns a, Turns b) => a.Count / b.Count;

    /// <summary>Whether the first is the smaller.</summary>
    public static bool operator <(Turns a, Turns b) => a.Count < b.Count;

    /// <summary>Whether the first is the larger.</summary>
    public static bool operator >(Turns a, Turns b) => a.Count > b.Count;

    /// <summary>Whether the first is not the larger.</summary>
    public static bool operator <=(Turns a, Turns b) => a.Count <= b.Count;

    /// <summary>Whether the first is not the smaller.</summary>
    public static bool operator >=(Turns a, Turns b) => a.Count >= b.Count;
}
