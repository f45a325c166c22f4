namespace Witnessmark.Handbook.Quantities;

/// <summary>A frequency or an engine speed, kept in hertz.</summary>
/// <param name="Hertz">The value in hertz.</param>
public readonly record struct Frequency(double Hertz) : IQuantity<Frequency>
{
    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Frequency;

    /// <inheritdoc/>
    public double Base => Hertz;

    /// <inheritdoc/>
    public static Frequency OfBase(double value) => new(value);

    /// <summary>The sum.</summary>
    public static Frequency operator +(Frequency a, Frequency b) => new(a.Hertz + b.Hertz);

    /// <summary>The difference.</summary>
    public static Frequency operator -(Frequency a, Frequency b) => new(a.Hertz - b.Hertz);

    /// <summary>The opposite.</summary>
    public static Frequency operator -(Frequency a) => new(-a.Hertz);

    /// <summary>A multiple.</summary>
    public static Frequency operator *(Frequency a, double factor) => new(a.Hertz * factor);

    /// <summary>A multiple.</summary>
    public static Frequency operator *(double factor, Frequency a) => new(a.Hertz * factor);

    /// <summary>A fraction.</summary>
    public static Frequency operator /(Frequency a, double divisor) => new(a.Hertz / divisor);

    /// <summary>How many times the one goes into the other.</summary>
    public static double operator /(Frequency a, Frequency b) => a.Hertz / b.Hertz;

    /// <summary>Whether the first is the smaller.</summary>
    public static bool operator <(Frequency a, Frequency b) => a.Hertz < b.Hertz;

    /// <summary>Whether the first is the larger.</summary>
    public static bool operator >(Frequency a, Frequency b) => a.Hertz > b.Hertz;

    /// <summary>Whether the first is not the larger.</summary>
    public static bool operator <=(Frequency a, Frequency b) => a.Hertz <= b.Hertz;

    /// <summary>Whether the first is not the smaller.</summary>
    public static bool operator >=(Frequency a, Frequency b) => a.Hertz >= b.Hertz;
}
