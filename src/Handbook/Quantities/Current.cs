namespace Witnessmark.Handbook.Quantities;

/// <summary>An electric current, kept in amperes.</summary>
/// <param name="Amperes">The value in amperes.</param>
public readonly record struct Current(double Amperes) : IQuantity<Current>
{
    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Current;

    /// <inheritdoc/>
    public double Base => Amperes;

    /// <inheritdoc/>
    public static Current OfBase(double value) => new(value);

    /// <summary>The sum.</summary>
    public static Current operator +(Current a, Current b) => new(a.Amperes + b.Amperes);

    /// <summary>The difference.</summary>
    public static Current operator -(Current a, Current b) => new(a.Amperes - b.Amperes);

    /// <summary>The opposite.</summary>
    public static Current operator -(Current a) => new(-a.Amperes);

    /// <summary>A multiple.</summary>
    public static Current operator *(Current a, double factor) => new(a.Amperes * factor);

    /// <summary>A multiple.</summary>
    public static Current operator *(double factor, Current a) => new(a.Amperes * factor);

    /// <summary>A fraction.</summary>
    public static Current operator /(Current a, double divisor) => new(a.Amperes / divisor);

    /// <summary>How many times the one goes into the other.</summary>
    public static double operator /(Current a, Current b) => a.Amperes / b.Amperes;

    /// <summary>Whether the first is the smaller.</summary>
    public static bool operator <(Current a, Current b) => a.Amperes < b.Amperes;

    /// <summary>Whether the first is the larger.</summary>
    public static bool operator >(Current a, Current b) => a.Amperes > b.Amperes;

    /// <summary>Whether the first is not the larger.</summary>
    public static bool operator <=(Current a, Current b) => a.Amperes <= b.Amperes;

    /// <summary>Whether the first is not the smaller.</summary>
    public static bool operator >=(Current a, Current b) => a.Amperes >= b.Amperes;
}
