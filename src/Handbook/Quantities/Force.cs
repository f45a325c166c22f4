namespace Witnessmark.Handbook.Quantities;

/// <summary>A force, kept in newtons.</summary>
/// <param name="Newtons">The value in newtons.</param>
public readonly record struct Force(double Newtons) : IQuantity<Force>
{
    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Force;

    /// <inheritdoc/>
    public double Base => Newtons;

    /// <inheritdoc/>
    public static Force OfBase(double value) => new(value);

    /// <summary>The sum.</summary>
    public static Force operator +(Force a, Force b) => new(a.Newtons + b.Newtons);

    /// <summary>The difference.</summary>
    public static Force operator -(Force a, Force b) => new(a.Newtons - b.Newtons);

    /// <summary>The opposite.</summary>
    public static Force operator -(Force a) => new(-a.Newtons);

    /// <summary>A multiple.</summary>
    public static Force operator *(Force a, double factor) => new(a.Newtons * factor);

    /// <summary>A multiple.</summary>
    public static Force operator *(double factor, Force a) => new(a.Newtons * factor);

    /// <summary>A fraction.</summary>
    public static Force operator /(Force a, double divisor) => new(a.Newtons / divisor);

    /// <summary>How many times the one goes into the other.</summary>
    public static double operator /(Force a, Force b) => a.Newtons / b.Newtons;

    /// <summary>Whether the first is the smaller.</summary>
    public static bool operator <(Force a, Force b) => a.Newtons < b.Newtons;

    /// <summary>Whether the first is the larger.</summary>
    public static bool operator >(Force a, Force b) => a.Newtons > b.Newtons;

    /// <summary>Whether the first is not the larger.</summary>
    public static bool operator <=(Force a, Force b) => a.Newtons <= b.Newtons;

    /// <summary>Whether the first is not the smaller.</summary>
    public static bool operator >=(Force a, Force b) => a.Newtons >= b.Newtons;
}
