namespace Witnessmark.Handbook.Quantities;

/// <summary>A spring rate, kept in newtons per millimetre.</summary>
/// <param name="NewtonsPerMillimetre">The value in newtons per millimetre.</param>
public readonly record struct Stiffness(double NewtonsPerMillimetre) : IQuantity<Stiffness>
{
    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Stiffness;

    /// <inheritdoc/>
    public double Base => NewtonsPerMillimetre;

    /// <inheritdoc/>
    public static Stiffness OfBase(double value) => new(value);

    /// <summary>The sum.</summary>
    public static Stiffness operator +(Stiffness a, Stiffness b) =>
        new(a.NewtonsPerMillimetre + b.NewtonsPerMillimetre);

    /// <summary>The difference.</summary>
    public static Stiffness operator -(Stiffness a, Stiffness b) =>
        new(a.NewtonsPerMillimetre - b.NewtonsPerMillimetre);

    /// <summary>The opposite.</summary>
    public static Stiffness operator -(Stiffness a) => new(-a.NewtonsPerMillimetre);

    /// <summary>A multiple.</summary>
    public static Stiffness operator *(Stiffness a, double factor) => new(a.NewtonsPerMillimetre * factor);

    /// <summary>A multiple.</summary>
    public static Stiffness operator *(double factor, Stiffness a) => new(a.NewtonsPerMillimetre * factor);

    /// <summary>A fraction.</summary>
    public static Stiffness operator /(Stiffness a, double divisor) => new(a.NewtonsPerMillimetre / divisor);

    /// <summary>How many times the one goes into the other.</summary>
    public static double operator /(Stiffness a, Stiffness b) => a.NewtonsPerMillimetre / b.NewtonsPerMillimetre;

    /// <summary>Whether the first is the smaller.</summary>
    public static bool operator <(Stiffness a, Stiffness b) => a.NewtonsPerMillimetre < b.NewtonsPerMillimetre;

    /// <summary>Whether the first is the larger.</summary>
    public static bool operator >(Stiffness a, Stiffness b) => a.NewtonsPerMillimetre > b.NewtonsPerMillimetre;

    /// <summary>Whether the first is not the larger.</summary>
    public static bool operator <=(Stiffness a, Stiffness b) => a.NewtonsPerMillimetre <= b.NewtonsPerMillimetre;

    /// <summary>Whether the first is not the smaller.</summary>
    public static bool operator >=(Stiffness a, Stiffness b) => a.NewtonsPerMillimetre >= b.NewtonsPerMillimetre;
}
