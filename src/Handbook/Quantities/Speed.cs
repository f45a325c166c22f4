namespace Witnessmark.Handbook.Quantities;

/// <summary>A speed over the road, kept in kilometres per hour.</summary>
/// <param name="KilometresPerHour">The value in kilometres per hour.</param>
public readonly record struct Speed(double KilometresPerHour) : IQuantity<Speed>
{
    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.Speed;

    /// <inheritdoc/>
    public double Base => KilometresPerHour;

    /// <inheritdoc/>
    public static Speed OfBase(double value) => new(value);

    /// <summary>The sum.</summary>
    public static Speed operator +(Speed a, Speed b) => new(a.KilometresPerHour + b.KilometresPerHour);

    /// <summary>The difference.</summary>
    public static Speed operator -(Speed a, Speed b) => new(a.KilometresPerHour - b.KilometresPerHour);

    /// <summary>The opposite.</summary>
    public static Speed operator -(Speed a) => new(-a.KilometresPerHour);

    /// <summary>A multiple.</summary>
    public static Speed operator *(Speed a, double factor) => new(a.KilometresPerHour * factor);

    /// <summary>A multiple.</summary>
    public static Speed operator *(double factor, Speed a) => new(a.KilometresPerHour * factor);

    /// <summary>A fraction.</summary>
    public static Speed operator /(Speed a, double divisor) => new(a.KilometresPerHour / divisor);

    /// <summary>How many times the one goes into the other.</summary>
    public static double operator /(Speed a, Speed b) => a.KilometresPerHour / b.KilometresPerHour;

    /// <summary>Whether the first is the smaller.</summary>
    public static bool operator <(Speed a, Speed b) => a.KilometresPerHour < b.KilometresPerHour;

    /// <summary>Whether the first is the larger.</summary>
    public static bool operator >(Speed a, Speed b) => a.KilometresPerHour > b.KilometresPerHour;

    /// <summary>Whether the first is not the larger.</summary>
    public static bool operator <=(Speed a, Speed b) => a.KilometresPerHour <= b.KilometresPerHour;

    /// <summary>Whether the first is not the smaller.</summary>
    public static bool operator >=(Speed a, Speed b) => a.KilometresPerHour >= b.KilometresPerHour;
}
