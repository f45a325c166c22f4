namespace Witnessmark.Handbook.Quantities;

/// <summary>A dynamic viscosity, kept in millipascal seconds.</summary>
/// <param name="MillipascalSeconds">The value in millipascal seconds.</param>
public readonly record struct DynamicViscosity(double MillipascalSeconds) : IQuantity<DynamicViscosity>
{
    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.DynamicViscosity;

    /// <inheritdoc/>
    public double Base => MillipascalSeconds;

    /// <inheritdoc/>
    public static DynamicViscosity OfBase(double value) => new(value);

    /// <summary>The sum.</summary>
    public static DynamicViscosity operator +(DynamicViscosity a, DynamicViscosity b) =>
        new(a.MillipascalSeconds + b.MillipascalSeconds);

    /// <summary>The difference.</summary>
    public static DynamicViscosity operator -(DynamicViscosity a, DynamicViscosity b) =>
        new(a.MillipascalSeconds - b.MillipascalSeconds);

    /// <summary>The opposite.</summary>
    public static DynamicViscosity operator -(DynamicViscosity a) => new(-a.MillipascalSeconds);

    /// <summary>A multiple.</summary>
    public static DynamicViscosity operator *(DynamicViscosity a, double factor) => new(a.MillipascalSeconds * factor);

    /// <summary>A multiple.</summary>
    public static DynamicViscosity operator *(double factor, DynamicViscosity a) => new(a.MillipascalSeconds * factor);

    /// <summary>A fraction.</summary>
    public static DynamicViscosity operator /(DynamicViscosity a, double divisor) =>
        new(a.MillipascalSeconds / divisor);

    /// <summary>How many times the one goes into the other.</summary>
    public static double operator /(DynamicViscosity a, DynamicViscosity b) =>
        a.MillipascalSeconds / b.MillipascalSeconds;

    /// <summary>Whether the first is the smaller.</summary>
    public static bool operator <(DynamicViscosity a, DynamicViscosity b) =>
        a.MillipascalSeconds < b.MillipascalSeconds;

    /// <summary>Whether the first is the larger.</summary>
    public static bool operator >(DynamicViscosity a, DynamicViscosity b) =>
        a.MillipascalSeconds > b.MillipascalSeconds;

    /// <summary>Whether the first is not the larger.</summary>
    public static bool operator <=(DynamicViscosity a, DynamicViscosity b) =>
        a.MillipascalSeconds <= b.MillipascalSeconds;

    /// <summary>Whether the first is not the smaller.</summary>
    public static bool operator >=(DynamicViscosity a, DynamicViscosity b) =>
        a.MillipascalSeconds >= b.MillipascalSeconds;
}
