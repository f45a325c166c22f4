namespace Witnessmark.Handbook.Quantities;

/// <summary>A coefficient of thermal expansion, kept in 1 per kelvin.</summary>
/// <param name="PerKelvin">The value in 1 per kelvin.</param>
public readonly record struct Expansion(double PerKelvin) : IQuantity<Expansion>
{
    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.PerTemperature;

    /// <inheritdoc/>
    public double Base => PerKelvin;

    /// <inheritdoc/>
    public static Expansion OfBase(double value) => new(value);

    /// <summary>The sum.</summary>
    public static Expansion operator +(Expansion a, Expansion b) => new(a.PerKelvin + b.PerKelvin);

    /// <summary>The difference.</summary>
    public static Expansion operator -(Expansion a, Expansion b) => new(a.PerKelvin - b.PerKelvin);

    /// <summary>The opposite.</summary>
    public static Expansion operator -(Expansion a) => new(-a.PerKelvin);

    /// <summary>A multiple.</summary>
    public static Expansion operator *(Expansion a, double factor) => new(a.PerKelvin * factor);

    /// <summary>A multiple.</summary>
    public static Expansion operator *(double factor, Expansion a) => new(a.PerKelvin * factor);

    /// <summary>A fraction.</summary>
    public static Expansion operator /(Expansion a, double divisor) => new(a.PerKelvin / divisor);

    /// <summary>How many times the one goes into the other.</summary>
    public static double operator /(Expansion a, Expansion b) => a.PerKelvin / b.PerKelvin;

    /// <summary>Whether the first is the smaller.</summary>
    public static bool operator <(Expansion a, Expansion b) => a.PerKelvin < b.PerKelvin;

    /// <summary>Whether the first is the larger.</summary>
    public static bool operator >(Expansion a, Expansion b) => a.PerKelvin > b.PerKelvin;

    /// <summary>Whether the first is not the larger.</summary>
    public static bool operator <=(Expansion a, Expansion b) => a.PerKelvin <= b.PerKelvin;

    /// <summary>Whether the first is not the smaller.</summary>
    public static bool operator >=(Expansion a, Expansion b) => a.PerKelvin >= b.PerKelvin;
}
