namespace Witnessmark.Handbook.Quantities;

/// <summary>A length, kept in millimetres.</summary>
/// <param name="Millimetres">The value in millimetres.</param>
public readonly record struct Length(double Millimetres) : IQuantity<Length>
{
    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Length;

    /// <inheritdoc/>
    public double Base => Millimetres;

    /// <inheritdoc/>
    public static Length OfBase(double value) => new(value);

    /// <summary>The sum.</summary>
    public static Length operator +(Length a, Length b) => new(a.Millimetres + b.Millimetres);

    /// <summary>The difference.</summary>
    public static Length operator -(Length a, Length b) => new(a.Millimetres - b.Millimetres);

    /// <summary>The opposite.</summary>
    public static Length operator -(Length a) => new(-a.Millimetres);

    /// <summary>A multiple.</summary>
    public static Length operator *(Length a, double factor) => new(a.Millimetres * factor);

    /// <summary>A multiple.</summary>
    public static Length operator *(double factor, Length a) => new(a.Millimetres * factor);

    /// <summary>A fraction.</summary>
    public static Length operator /(Length a, double divisor) => new(a.Millimetres / divisor);

    /// <summary>How many times the one goes into the other.</summary>
    public static double operator /(Length a, Length b) => a.Millimetres / b.Millimetres;

    /// <summary>Whether the first is the smaller.</summary>
    public static bool operator <(Length a, Length b) => a.Millimetres < b.Millimetres;

    /// <summary>Whether the first is the larger.</summary>
    public static bool operator >(Length a, Length b) => a.Millimetres > b.Millimetres;

    /// <summary>Whether the first is not the larger.</summary>
    public static bool operator <=(Length a, Length b) => a.Millimetres <= b.Millimetres;

    /// <summary>Whether the first is not the smaller.</summary>
    public static bool operator >=(Length a, Length b) => a.Millimetres >= b.Millimetres;
}
