namespace Witnessmark.Handbook.Quantities;

/// <summary>A power, kept in watts.</summary>
/// <param name="Watts">The value in watts.</param>
public readonly record struct Power(double Watts) : IQuantity<Power>
{
    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Power;

    /// <inheritdoc/>
    public double Base => Watts;

    /// <inheritdoc/>
    public static Power OfBase(double value) => new(value);

    /// <summary>The sum.</summary>
    public static Power operator +(Power a, Power b) => new(a.Watts + b.Watts);

    /// <summary>The difference.</summary>
    public static Power operator -(Power a, Power b) => new(a.Watts - b.Watts);

    /// <summary>The opposite.</summary>
    public static Power operator -(Power a) => new(-a.Watts);

    /// <summary>A multiple.</summary>
    public static Power operator *(Power a, double factor) => new(a.Watts * factor);

    /// <summary>A multiple.</summary>
    public static Power operator *(double factor, Power a) => new(a.Watts * factor);

    /// <summary>A fraction.</summary>
    public static Power operator /(Power a, double divisor) => new(a.Watts / divisor);

    /// <summary>How many times the one goes into the other.</summary>
    public static double operator /(Power a, Power b) => a.Watts / b.Watts;

    /// <summary>Whether the first is the smaller.</summary>
    public static bool operator <(Power a, Power b) => a.Watts < b.Watts;

    /// <summary>Whether the first is the larger.</summary>
    public static bool operator >(Power a, Power b) => a.Watts > b.Watts;

    /// <summary>Whether the first is not the larger.</summary>
    public static bool operator <=(Power a, Power b) => a.Watts <= b.Watts;

    /// <summary>Whether the first is not the smaller.</summary>
    public static bool operator >=(Power a, Power b) => a.Watts >= b.Watts;
}
