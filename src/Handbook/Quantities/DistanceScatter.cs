namespace Witnessmark.Handbook.Quantities;

/// <summary>Scatter of the distance ridden, growing with the root of time, kept in km per √day.</summary>
/// <param name="KilometresPerRootDay">The value in km per √day.</param>
public readonly record struct DistanceScatter(double KilometresPerRootDay) : IQuantity<DistanceScatter>
{
    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.LengthPerRootDuration;

    /// <inheritdoc/>
    public double Base => KilometresPerRootDay;

    /// <inheritdoc/>
    public static DistanceScatter OfBase(double value) => new(value);

    /// <summary>The sum.</summary>
    public static DistanceScatter operator +(DistanceScatter a, DistanceScatter b) =>
        new(a.KilometresPerRootDay + b.KilometresPerRootDay);

    /// <summary>The difference.</summary>
    public static DistanceScatter operator -(DistanceScatter a, DistanceScatter b) =>
        new(a.KilometresPerRootDay - b.KilometresPerRootDay);

    /// <summary>The opposite.</summary>
    public static DistanceScatter operator -(DistanceScatter a) => new(-a.KilometresPerRootDay);

    /// <summary>A multiple.</summary>
    public static DistanceScatter operator *(DistanceScatter a, double factor) => new(a.KilometresPerRootDay * factor);

    /// <summary>A multiple.</summary>
    public static DistanceScatter operator *(double factor, DistanceScatter a) => new(a.KilometresPerRootDay * factor);

    /// <summary>A fraction.</summary>
    public static DistanceScatter operator /(DistanceScatter a, double divisor) =>
        new(a.KilometresPerRootDay / divisor);

    /// <summary>How many times the one goes into the other.</summary>
    public static double operator /(DistanceScatter a, DistanceScatter b) =>
        a.KilometresPerRootDay / b.KilometresPerRootDay;

    /// <summary>Whether the first is the smaller.</summary>
    public static bool operator <(DistanceScatter a, DistanceScatter b) =>
        a.KilometresPerRootDay < b.KilometresPerRootDay;

    /// <summary>Whether the first is the larger.</summary>
    public static bool operator >(DistanceScatter a, DistanceScatter b) =>
        a.KilometresPerRootDay > b.KilometresPerRootDay;

    /// <summary>Whether the first is not the larger.</summary>
    public static bool operator <=(DistanceScatter a, DistanceScatter b) =>
        a.KilometresPerRootDay <= b.KilometresPerRootDay;

    /// <summary>Whether the first is not the smaller.</summary>
    public static bool operator >=(DistanceScatter a, DistanceScatter b) =>
        a.KilometresPerRootDay >= b.KilometresPerRootDay;
}
