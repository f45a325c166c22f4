namespace Witnessmark.Handbook.Quantities;

/// <summary>An electric resistance, kept in ohms.</summary>
/// <param name="Ohms">The value in ohms.</param>
public readonly record struct Resistance(double Ohms) : IQuantity<Resistance>
{
    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Resistance;

    /// <inheritdoc/>
    public double Base => Ohms;

    /// <inheritdoc/>
    public static Resistance OfBase(double value) => new(value);

    /// <summary>The sum.</summary>
    public static Resistance operator +(Resistance a, Resistance b) => new(a.Ohms + b.Ohms);

    /// <summary>The difference.</summary>
    public static Resistance operator -(Resistance a, Resistance b) => new(a.Ohms - b.Ohms);

    /// <summary>The opposite.</summary>
    public static Resistance operator -(Resistance a) => new(-a.Ohms);

    /// <summary>A multiple.</summary>
    public static Resistance operator *(Resistance a, double factor) => new(a.Ohms * factor);

    /// <summary>A multiple.</summary>
    public static Resistance operator *(double factor, Resistance a) => new(a.Ohms * factor);

    /// <summary>A fraction.</summary>
    public static Resistance operator /(Resistance a, double divisor) => new(a.Ohms / divisor);

    /// <summary>How many times the one goes into the other.</summary>
    public static double operator /(Resistance a, Resistance b) => a.Ohms / b.Ohms;

    /// <summary>Whether the first is the smaller.</summary>
    public static bool operator <(Resistance a, Resistance b) => a.Ohms < b.Ohms;

    /// <summary>Whether the first is the larger.</summary>
    public static bool operator >(Resistance a, Resistance b) => a.Ohms > b.Ohms;

    /// <summary>Whether the first is not the larger.</summary>
    public static bool operator <=(Resistance a, Resistance b) => a.Ohms <= b.Ohms;

    /// <summary>Whether the first is not the smaller.</summary>
    public static bool operator >=(Resistance a, Resistance b) => a.Ohms >= b.Ohms;
}
