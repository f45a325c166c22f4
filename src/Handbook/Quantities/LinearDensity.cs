namespace Witnessmark.Handbook.Quantities;

/// <summary>Mass for each length of a belt or string, kept in kilograms per metre.</summary>
/// <param name="KilogramsPerMetre">The value in kilograms per metre.</param>
public readonly record struct LinearDensity(double KilogramsPerMetre) : IQuantity<LinearDensity>
{
    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.MassPerLength;

    /// <inheritdoc/>
    public double Base => KilogramsPerMetre;

    /// <inheritdoc/>
    public static LinearDensity OfBase(double value) => new(value);

    /// <summary>The sum.</summary>
    public static LinearDensity operator +(LinearDensity a, LinearDensity b) =>
        new(a.KilogramsPerMetre + b.KilogramsPerMetre);

    /// <summary>The difference.</summary>
    public static LinearDensity operator -(LinearDensity a, LinearDensity b) =>
        new(a.KilogramsPerMetre - b.KilogramsPerMetre);

    /// <summary>The opposite.</summary>
    public static LinearDensity operator -(LinearDensity a) => new(-a.KilogramsPerMetre);

    /// <summary>A multiple.</summary>
    public static LinearDensity operator *(LinearDensity a, double factor) => new(a.KilogramsPerMetre * factor);

    /// <summary>A multiple.</summary>
    public static LinearDensity operator *(double factor, LinearDensity a) => new(a.KilogramsPerMetre * factor);

    /// <summary>A fraction.</summary>
    public static LinearDensity operator /(LinearDensity a, double divisor) => new(a.KilogramsPerMetre / divisor);

    /// <summary>How many times the one goes into the other.</summary>
    public static double operator /(LinearDensity a, LinearDensity b) => a.KilogramsPerMetre / b.KilogramsPerMetre;

    /// <summary>Whether the first is the smaller.</summary>
    public static bool operator <(LinearDensity a, LinearDensity b) => a.KilogramsPerMetre < b.KilogramsPerMetre;

    /// <summary>Whether the first is the larger.</summary>
    public static bool operator >(LinearDensity a, LinearDensity b) => a.KilogramsPerMetre > b.KilogramsPerMetre;

    /// <summary>Whether the first is not the larger.</summary>
    public static bool operator <=(LinearDensity a, LinearDensity b) => a.KilogramsPerMetre <= b.KilogramsPerMetre;

    /// <summary>Whether the first is not the smaller.</summary>
    public static bool operator >=(LinearDensity a, LinearDensity b) => a.KilogramsPerMetre >= b.KilogramsPerMetre;
}
