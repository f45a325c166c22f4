namespace Witnessmark.Handbook.Quantities;

/// <summary>A pressure, gauge or absolute as the parameter says, kept in kilopascals.</summary>
/// <param name="Kilopascals">The value in kilopascals.</param>
public readonly record struct Pressure(double Kilopascals) : IQuantity<Pressure>
{
    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Pressure;

    /// <inheritdoc/>
    public double Base => Kilopascals;

    /// <inheritdoc/>
    public static Pressure OfBase(double value) => new(value);

    /// <summary>The sum.</summary>
    public static Pressure operator +(Pressure a, Pressure b) => new(a.Kilopascals + b.Kilopascals);

    /// <summary>The difference.</summary>
    public static Pressure operator -(Pressure a, Pressure b) => new(a.Kilopascals - b.Kilopascals);

    /// <summary>The opposite.</summary>
    public static Pressure operator -(Pressure a) => new(-a.Kilopascals);

    /// <summary>A multiple.</summary>
    public static Pressure operator *(Pressure a, double factor) => new(a.Kilopascals * factor);

    /// <summary>A multiple.</summary>
    public static Pressure operator *(double factor, Pressure a) => new(a.Kilopascals * factor);

    /// <summary>A fraction.</summary>
    public static Pressure operator /(Pressure a, double divisor) => new(a.Kilopascals / divisor);

    /// <summary>How many times the one goes into the other.</summary>
    public static double operator /(Pressure a, Pressure b) => a.Kilopascals / b.Kilopascals;

    /// <summary>Whether the first is the smaller.</summary>
    public static bool operator <(Pressure a, Pressure b) => a.Kilopascals < b.Kilopascals;

    /// <summary>Whether the first is the larger.</summary>
    public static bool operator >(Pressure a, Pressure b) => a.Kilopascals > b.Kilopascals;

    /// <summary>Whether the first is not the larger.</summary>
    public static bool operator <=(Pressure a, Pressure b) => a.Kilopascals <= b.Kilopascals;

    /// <summary>Whether the first is not the smaller.</summary>
    public static bool operator >=(Pressure a, Pressure b) => a.Kilopascals >= b.Kilopascals;
}
