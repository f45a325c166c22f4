namespace Witnessmark.Handbook.Quantities;

/// <summary>A mass, kept in grams.</summary>
/// <param name="Grams">The value in grams.</param>
public readonly record struct Mass(double Grams) : IQuantity<Mass>
{
    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Mass;

    /// <inheritdoc/>
    public double Base => Grams;

    /// <inheritdoc/>
    public static Mass OfBase(double value) => new(value);

    /// <summary>The sum.</summary>
    public static Mass operator +(Mass a, Mass b) => new(a.Grams + b.Grams);

    /// <summary>The difference.</summary>
    public static Mass operator -(Mass a, Mass b) => new(a.Grams - b.Grams);

    /// <summary>The opposite.</summary>
    public static Mass operator -(Mass a) => new(-a.Grams);

    /// <summary>A multiple.</summary>
    public static Mass operator *(Mass a, double factor) => new(a.Grams * factor);

    /// <summary>A multiple.</summary>
    public static Mass operator *(double factor, Mass a) => new(a.Grams * factor);

    /// <summary>A fraction.</summary>
    public static Mass operator /(Mass a, double divisor) => new(a.Grams / divisor);

    /// <summary>How many times the one goes into the other.</summary>
    public static double operator /(Mass a, Mass b) => a.Grams / b.Grams;

    /// <summary>Whether the first is the smaller.</summary>
    public static bool operator <(Mass a, Mass b) => a.Grams < b.Grams;

    /// <summary>Whether the first is the larger.</summary>
    public static bool operator >(Mass a, Mass b) => a.Grams > b.Grams;

    /// <summary>Whether the first is not the larger.</summary>
    public static bool operator <=(Mass a, Mass b) => a.Grams <= b.Grams;

    /// <summary>Whether the first is not the smaller.</summary>
    public static bool operator >=(Mass a, Mass b) => a.Grams >= b.Grams;
}
