namespace Witnessmark.Handbook.Quantities;

/// <summary>A volume of fluid, kept in litres.</summary>
/// <param name="Litres">The value in litres.</param>
public readonly record struct Volume(double Litres) : IQuantity<Volume>
{
    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Volume;

    /// <inheritdoc/>
    public double Base => Litres;

    /// <inheritdoc/>
    public static Volume OfBase(double value) => new(value);

    /// <summary>The sum.</summary>
    public static Volume operator +(Volume a, Volume b) => new(a.Litres + b.Litres);

    /// <summary>The difference.</summary>
    public static Volume operator -(Volume a, Volume b) => new(a.Litres - b.Litres);

    /// <summary>The opposite.</summary>
    public static Volume operator -(Volume a) => new(-a.Litres);

    /// <summary>A multiple.</summary>
    public static Volume operator *(Volume a, double factor) => new(a.Litres * factor);

    /// <summary>A multiple.</summary>
    public static Volume operator *(double factor, Volume a) => new(a.Litres * factor);

    /// <summary>A fraction.</summary>
    public static Volume operator /(Volume a, double divisor) => new(a.Litres / divisor);

    /// <summary>How many times the one goes into the other.</summary>
    public static double operator /(Volume a, Volume b) => a.Litres / b.Litres;

    /// <summary>Whether the first is the smaller.</summary>
    public static bool operator <(Volume a, Volume b) => a.Litres < b.Litres;

    /// <summary>Whether the first is the larger.</summary>
    public static bool operator >(Volume a, Volume b) => a.Litres > b.Litres;

    /// <summary>Whether the first is not the larger.</summary>
    public static bool operator <=(Volume a, Volume b) => a.Litres <= b.Litres;

    /// <summary>Whether the first is not the smaller.</summary>
    public static bool operator >=(Volume a, Volume b) => a.Litres >= b.Litres;
}
