namespace Witnessmark.Handbook.Quantities;

/// <summary>An area, or a slack squared, kept in square millimetres.</summary>
/// <param name="SquareMillimetres">The value in square millimetres.</param>
public readonly record struct Area(double SquareMillimetres) : IQuantity<Area>
{
    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Area;

    /// <inheritdoc/>
    public double Base => SquareMillimetres;

    /// <inheritdoc/>
    public static Area OfBase(double value) => new(value);

    /// <summary>The sum.</summary>
    public static Area operator +(Area a, Area b) => new(a.SquareMillimetres + b.SquareMillimetres);

    /// <summary>The difference.</summary>
    public static Area operator -(Area a, Area b) => new(a.SquareMillimetres - b.SquareMillimetres);

    /// <summary>The opposite.</summary>
    public static Area operator -(Area a) => new(-a.SquareMillimetres);

    /// <summary>A multiple.</summary>
    public static Area operator *(Area a, double factor) => new(a.SquareMillimetres * factor);

    /// <summary>A multiple.</summary>
    public static Area operator *(double factor, Area a) => new(a.SquareMillimetres * factor);

    /// <summary>A fraction.</summary>
    public static Area operator /(Area a, double divisor) => new(a.SquareMillimetres / divisor);

    /// <summary>How many times the one goes into the other.</summary>
    public static double operator /(Area a, Area b) => a.SquareMillimetres / b.SquareMillimetres;

    /// <summary>Whether the first is the smaller.</summary>
    public static bool operator <(Area a, Area b) => a.SquareMillimetres < b.SquareMillimetres;

    /// <summary>Whether the first is the larger.</summary>
    public static bool operator >(Area a, Area b) => a.SquareMillimetres > b.SquareMillimetres;

    /// <summary>Whether the first is not the larger.</summary>
    public static bool operator <=(Area a, Area b) => a.SquareMillimetres <= b.SquareMillimetres;

    /// <summary>Whether the first is not the smaller.</summary>
    public static bool operator >=(Area a, Area b) => a.SquareMillimetres >= b.SquareMillimetres;
}
