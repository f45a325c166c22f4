namespace Witnessmark.Handbook.Quantities;

/// <summary>Travel of one thing for travel of another, kept in mm per mm.</summary>
/// <param name="MillimetresPerMillimetre">The value in mm per mm.</param>
public readonly record struct Slope(double MillimetresPerMillimetre) : IQuantity<Slope>
{
    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.LengthPerLength;

    /// <inheritdoc/>
    public double Base => MillimetresPerMillimetre;

    /// <inheritdoc/>
    public static Slope OfBase(double value) => new(value);

    /// <summary>The sum.</summary>
    public static Slope operator +(Slope a, Slope b) => new(a.MillimetresPerMillimetre + b.MillimetresPerMillimetre);

    /// <summary>The difference.</summary>
    public static Slope operator -(Slope a, Slope b) => new(a.MillimetresPerMillimetre - b.MillimetresPerMillimetre);

    /// <summary>The opposite.</summary>
    public static Slope operator -(Slope a) => new(-a.MillimetresPerMillimetre);

    /// <summary>A multiple.</summary>
    public static Slope operator *(Slope a, double factor) => new(a.MillimetresPerMillimetre * factor);

    /// <summary>A multiple.</summary>
    public static Slope operator *(double factor, Slope a) => new(a.MillimetresPerMillimetre * factor);

    /// <summary>A fraction.</summary>
    public static Slope operator /(Slope a, double divisor) => new(a.MillimetresPerMillimetre / divisor);

    /// <summary>How many times the one goes into the other.</summary>
    public static double operator /(Slope a, Slope b) => a.MillimetresPerMillimetre / b.MillimetresPerMillimetre;

    /// <summary>Whether the first is the smaller.</summary>
    public static bool operator <(Slope a, Slope b) => a.MillimetresPerMillimetre < b.MillimetresPerMillimetre;

    /// <summary>Whether the first is the larger.</summary>
    public static bool operator >(Slope a, Slope b) => a.MillimetresPerMillimetre > b.MillimetresPerMillimetre;

    /// <summary>Whether the first is not the larger.</summary>
    public static bool operator <=(Slope a, Slope b) => a.MillimetresPerMillimetre <= b.MillimetresPerMillimetre;

    /// <summary>Whether the first is not the smaller.</summary>
    public static bool operator >=(Slope a, Slope b) => a.MillimetresPerMillimetre >= b.MillimetresPerMillimetre;
}
