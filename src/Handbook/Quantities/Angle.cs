namespace Witnessmark.Handbook.Quantities;

/// <summary>A plane angle, kept in radians.</summary>
/// <param name="Radians">The value in radians.</param>
public readonly record struct Angle(double Radians) : IQuantity<Angle>
{
    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Angle;

    /// <inheritdoc/>
    public double Base => Radians;

    /// <inheritdoc/>
    public static Angle OfBase(double value) => new(value);

    /// <summary>The sum.</summary>
    public static Angle operator +(Angle a, Angle b) => new(a.Radians + b.Radians);

    /// <summary>The difference.</summary>
    public static Angle operator -(Angle a, Angle b) => new(a.Radians - b.Radians);

    /// <summary>The opposite.</summary>
    public static Angle operator -(Angle a) => new(-a.Radians);

    /// <summary>A multiple.</summary>
    public static Angle operator *(Angle a, double factor) => new(a.Radians * factor);

    /// <summary>A multiple.</summary>
    public static Angle operator *(double factor, Angle a) => new(a.Radians * factor);

    /// <summary>A fraction.</summary>
    public static Angle operator /(Angle a, double divisor) => new(a.Radians / divisor);

    /// <summary>How many times the one goes into the other.</summary>
    public static double operator /(Angle a, Angle b) => a.Radians / b.Radians;

    /// <summary>Whether the first is the smaller.</summary>
    public static bool operator <(Angle a, Angle b) => a.Radians < b.Radians;

    /// <summary>Whether the first is the larger.</summary>
    public static bool operator >(Angle a, Angle b) => a.Radians > b.Radians;

    /// <summary>Whether the first is not the larger.</summary>
    public static bool operator <=(Angle a, Angle b) => a.Radians <= b.Radians;

    /// <summary>Whether the first is not the smaller.</summary>
    public static bool operator >=(Angle a, Angle b) => a.Radians >= b.Radians;
}
