namespace Witnessmark.Handbook.Quantities;

/// <summary>An electric charge, kept in ampere hours.</summary>
/// <param name="AmpereHours">The value in ampere hours.</param>
public readonly record struct Charge(double AmpereHours) : IQuantity<Charge>
{
    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Charge;

    /// <inheritdoc/>
    public double Base => AmpereHours;

    /// <inheritdoc/>
    public static Charge OfBase(double value) => new(value);

    /// <summary>The sum.</summary>
    public static Charge operator +(Charge a, Charge b) => new(a.AmpereHours + b.AmpereHours);

    /// <summary>The difference.</summary>
    public static Charge operator -(Charge a, Charge b) => new(a.AmpereHours - b.AmpereHours);

    /// <summary>The opposite.</summary>
    public static Charge operator -(Charge a) => new(-a.AmpereHours);

    /// <summary>A multiple.</summary>
    public static Charge operator *(Charge a, double factor) => new(a.AmpereHours * factor);

    /// <summary>A multiple.</summary>
    public static Charge operator *(double factor, Charge a) => new(a.AmpereHours * factor);

    /// <summary>A fraction.</summary>
    public static Charge operator /(Charge a, double divisor) => new(a.AmpereHours / divisor);

    /// <summary>How many times the one goes into the other.</summary>
    public static double operator /(Charge a, Charge b) => a.AmpereHours / b.AmpereHours;

    /// <summary>Whether the first is the smaller.</summary>
    public static bool operator <(Charge a, Charge b) => a.AmpereHours < b.AmpereHours;

    /// <summary>Whether the first is the larger.</summary>
    public static bool operator >(Charge a, Charge b) => a.AmpereHours > b.AmpereHours;

    /// <summary>Whether the first is not the larger.</summary>
    public static bool operator <=(Charge a, Charge b) => a.AmpereHours <= b.AmpereHours;

    /// <summary>Whether the first is not the smaller.</summary>
    public static bool operator >=(Charge a, Charge b) => a.AmpereHours >= b.AmpereHours;
}
