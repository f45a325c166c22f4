namespace Witnessmark.Handbook.Quantities;

/// <summary>A temperature on the Celsius scale, kept in degrees Celsius.</summary>
/// <param name="DegreesCelsius">The value in degrees Celsius.</param>
public readonly record struct Temperature(double DegreesCelsius) : IQuantity<Temperature>
{
    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Temperature;

    /// <inheritdoc/>
    public double Base => DegreesCelsius;

    /// <inheritdoc/>
    public static Temperature OfBase(double value) => new(value);

    /// <summary>The sum.</summary>
    public static Temperature operator +(Temperature a, Temperature b) => new(a.DegreesCelsius + b.DegreesCelsius);

    /// <summary>The difference.</summary>
    public static Temperature operator -(Temperature a, Temperature b) => new(a.DegreesCelsius - b.DegreesCelsius);

    /// <summary>The opposite.</summary>
    public static Temperature operator -(Temperature a) => new(-a.DegreesCelsius);

    /// <summary>A multiple.</summary>
    public static Temperature operator *(Temperature a, double factor) => new(a.DegreesCelsius * factor);

    /// <summary>A multiple.</summary>
    public static Temperature operator *(double factor, Temperature a) => new(a.DegreesCelsius * factor);

    /// <summary>A fraction.</summary>
    public static Temperature operator /(Temperature a, double divisor) => new(a.DegreesCelsius / divisor);

    /// <summary>How many times the one goes into the other.</summary>
    public static double operator /(Temperature a, Temperature b) => a.DegreesCelsius / b.DegreesCelsius;

    /// <summary>Whether the first is the smaller.</summary>
    public static bool operator <(Temperature a, Temperature b) => a.DegreesCelsius < b.DegreesCelsius;

    /// <summary>Whether the first is the larger.</summary>
    public static bool operator >(Temperature a, Temperature b) => a.DegreesCelsius > b.DegreesCelsius;

    /// <summary>Whether the first is not the larger.</summary>
    public static bool operator <=(Temperature a, Temperature b) => a.DegreesCelsius <= b.DegreesCelsius;

    /// <summary>Whether the first is not the smaller.</summary>
    public static bool operator >=(Temperature a, Temperature b) => a.DegreesCelsius >= b.DegreesCelsius;
}
