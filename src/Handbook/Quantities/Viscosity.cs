namespace Witnessmark.Handbook.Quantities;

/// <summary>A kinematic viscosity, kept in square millimetres per second.</summary>
/// <param name="SquareMillimetresPerSecond">The value in square millimetres per second.</param>
public readonly record struct Viscosity(double SquareMillimetresPerSecond) : IQuantity<Viscosity>
{
    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.KinematicViscosity;

    /// <inheritdoc/>
    public double Base => SquareMillimetresPerSecond;

    /// <inheritdoc/>
    public static Viscosity OfBase(double value) => new(value);

    /// <summary>The sum.</summary>
    public static Viscosity operator +(Viscosity a, Viscosity b) =>
        new(a.SquareMillimetresPerSecond + b.SquareMillimetresPerSecond);

    /// <summary>The difference.</summary>
    public static Viscosity operator -(Viscosity a, Viscosity b) =>
        new(a.SquareMillimetresPerSecond - b.SquareMillimetresPerSecond);

    /// <summary>The opposite.</summary>
    public static Viscosity operator -(Viscosity a) => new(-a.SquareMillimetresPerSecond);

    /// <summary>A multiple.</summary>
    public static Viscosity operator *(Viscosity a, double factor) => new(a.SquareMillimetresPerSecond * factor);

    /// <summary>A multiple.</summary>
    public static Viscosity operator *(double factor, Viscosity a) => new(a.SquareMillimetresPerSecond * factor);

    /// <summary>A fraction.</summary>
    public static Viscosity operator /(Viscosity a, double divisor) => new(a.SquareMillimetresPerSecond / divisor);

    /// <summary>How many times the one goes into the other.</summary>
    public static double operator /(Viscosity a, Viscosity b) =>
        a.SquareMillimetresPerSecond / b.SquareMillimetresPerSecond;

    /// <summary>Whether the first is the smaller.</summary>
    public static bool operator <(Viscosity a, Viscosity b) =>
        a.SquareMillimetresPerSecond < b.SquareMillimetresPerSecond;

    /// <summary>Whether the first is the larger.</summary>
    public static bool operator >(Viscosity a, Viscosity b) =>
        a.SquareMillimetresPerSecond > b.SquareMillimetresPerSecond;

    /// <summary>Whether the first is not the larger.</summary>
    public static bool operator <=(Viscosity a, Viscosity b) =>
        a.SquareMillimetresPerSecond <= b.SquareMillimetresPerSecond;

    /// <summary>Whether the first is not the smaller.</summary>
    public static bool operator >=(Viscosity a, Viscosity b) =>
        a.SquareMillimetresPerSecond >= b.SquareMillimetresPerSecond;
}
