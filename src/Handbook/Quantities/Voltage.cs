namespace Witnessmark.Handbook.Quantities;

/// <summary>An electric potential difference, kept in volts.</summary>
/// <param name="Volts">The value in volts.</param>
public readonly record struct Voltage(double Volts) : IQuantity<Voltage>
{
    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Voltage;

    /// <inheritdoc/>
    public double Base => Volts;

    /// <inheritdoc/>
    public static Voltage OfBase(double value) => new(value);

    /// <summary>The sum.</summary>
    public static Voltage operator +(Voltage a, Voltage b) => new(a.Volts + b.Volts);

    /// <summary>The difference.</summary>
    public static Voltage operator -(Voltage a, Voltage b) => new(a.Volts - b.Volts);

    /// <summary>The opposite.</summary>
    public static Voltage operator -(Voltage a) => new(-a.Volts);

    /// <summary>A multiple.</summary>
    public static Voltage operator *(Voltage a, double factor) => new(a.Volts * factor);

    /// <summary>A multiple.</summary>
    public static Voltage operator *(double factor, Voltage a) => new(a.Volts * factor);

    /// <summary>A fraction.</summary>
    public static Voltage operator /(Voltage a, double divisor) => new(a.Volts / divisor);

    /// <summary>How many times the one goes into the other.</summary>
    public static double operator /(Voltage a, Voltage b) => a.Volts / b.Volts;

    /// <summary>Whether the first is the smaller.</summary>
    public static bool operator <(Voltage a, Voltage b) => a.Volts < b.Volts;

    /// <summary>Whether the first is the larger.</summary>
    public static bool operator >(Voltage a, Voltage b) => a.Volts > b.Volts;

    /// <summary>Whether the first is not the larger.</summary>
    public static bool operator <=(Voltage a, Voltage b) => a.Volts <= b.Volts;

    /// <summary>Whether the first is not the smaller.</summary>
    public static bool operator >=(Voltage a, Voltage b) => a.Volts >= b.Volts;
}
