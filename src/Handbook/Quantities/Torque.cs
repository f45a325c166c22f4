namespace Witnessmark.Handbook.Quantities;

/// <summary>A torque, kept in newton metres.</summary>
/// <param name="NewtonMetres">The value in newton metres.</param>
public readonly record struct Torque(double NewtonMetres) : IQuantity<Torque>
{
    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Torque;

    /// <inheritdoc/>
    public double Base => NewtonMetres;

    /// <inheritdoc/>
    public static Torque OfBase(double value) => new(value);

    /// <summary>The sum.</summary>
    public static Torque operator +(Torque a, Torque b) => new(a.NewtonMetres + b.NewtonMetres);

    /// <summary>The difference.</summary>
    public static Torque operator -(Torque a, Torque b) => new(a.NewtonMetres - b.NewtonMetres);

    /// <summary>The opposite.</summary>
    public static Torque operator -(Torque a) => new(-a.NewtonMetres);

    /// <summary>A multiple.</summary>
    public static Torque operator *(Torque a, double factor) => new(a.NewtonMetres * factor);

    /// <summary>A multiple.</summary>
    public static Torque operator *(double factor, Torque a) => new(a.NewtonMetres * factor);

    /// <summary>A fraction.</summary>
    public static Torque operator /(Torque a, double divisor) => new(a.NewtonMetres / divisor);

    /// <summary>How many times the one goes into the other.</summary>
    public static double operator /(Torque a, Torque b) => a.NewtonMetres / b.NewtonMetres;

    /// <summary>Whether the first is the smaller.</summary>
    public static bool operator <(Torque a, Torque b) => a.NewtonMetres < b.NewtonMetres;

    /// <summary>Whether the first is the larger.</summary>
    public static bool operator >(Torque a, Torque b) => a.NewtonMetres > b.NewtonMetres;

    /// <summary>Whether the first is not the larger.</summary>
    public static bool operator <=(Torque a, Torque b) => a.NewtonMetres <= b.NewtonMetres;

    /// <summary>Whether the first is not the smaller.</summary>
    public static bool operator >=(Torque a, Torque b) => a.NewtonMetres >= b.NewtonMetres;
}
