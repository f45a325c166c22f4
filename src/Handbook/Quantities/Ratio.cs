namespace Witnessmark.Handbook.Quantities;

/// <summary>A pure number or a percentage, kept in a pure number, 1 being the whole.</summary>
/// <param name="Value">The value in a pure number, 1 being the whole.</param>
public readonly record struct Ratio(double Value) : IQuantity<Ratio>
{
    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Number;

    /// <inheritdoc/>
    public double Base => Value;

    /// <inheritdoc/>
    public static Ratio OfBase(double value) => new(value);

    /// <summary>The sum.</summary>
    public static Ratio operator +(Ratio a, Ratio b) => new(a.Value + b.Value);

    /// <summary>The difference.</summary>
    public static Ratio operator -(Ratio a, Ratio b) => new(a.Value - b.Value);

    /// <summary>The opposite.</summary>
    public static Ratio operator -(Ratio a) => new(-a.Value);

    /// <summary>A multiple.</summary>
    public static Ratio operator *(Ratio a, double factor) => new(a.Value * factor);

    /// <summary>A multiple.</summary>
    public static Ratio operator *(double factor, Ratio a) => new(a.Value * factor);

    /// <summary>A fraction.</summary>
    public static Ratio operator /(Ratio a, double divisor) => new(a.Value / divisor);

    /// <summary>How many times the one goes into the other.</summary>
    public static double operator /(Ratio a, Ratio b) => a.Value / b.Value;

    /// <summary>Whether the first is the smaller.</summary>
    public static bool operator <(Ratio a, Ratio b) => a.Value < b.Value;

    /// <summary>Whether the first is the larger.</summary>
    public static bool operator >(Ratio a, Ratio b) => a.Value > b.Value;

    /// <summary>Whether the first is not the larger.</summary>
    public static bool operator <=(Ratio a, Ratio b) => a.Value <= b.Value;

    /// <summary>Whether the first is not the smaller.</summary>
    public static bool operator >=(Ratio a, Ratio b) => a.Value >= b.Value;
}
