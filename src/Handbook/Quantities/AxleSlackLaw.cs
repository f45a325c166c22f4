namespace Witnessmark.Handbook.Quantities;

/// <summary>Slack squared given up for each millimetre of axle travel, kept in mm² per mm.</summary>
/// <param name="SquareMillimetresPerMillimetre">The value in mm² per mm.</param>
public readonly record struct AxleSlackLaw(double SquareMillimetresPerMillimetre) : IQuantity<AxleSlackLaw>
{
    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.AreaPerLength;

    /// <inheritdoc/>
    public double Base => SquareMillimetresPerMillimetre;

    /// <inheritdoc/>
    public static AxleSlackLaw OfBase(double value) => new(value);

    /// <summary>The sum.</summary>
    public static AxleSlackLaw operator +(AxleSlackLaw a, AxleSlackLaw b) =>
        new(a.SquareMillimetresPerMillimetre + b.SquareMillimetresPerMillimetre);

    /// <summary>The difference.</summary>
    public static AxleSlackLaw operator -(AxleSlackLaw a, AxleSlackLaw b) =>
        new(a.SquareMillimetresPerMillimetre - b.SquareMillimetresPerMillimetre);

    /// <summary>The opposite.</summary>
    public static AxleSlackLaw operator -(AxleSlackLaw a) => new(-a.SquareMillimetresPerMillimetre);

    /// <summary>A multiple.</summary>
    public static AxleSlackLaw operator *(AxleSlackLaw a, double factor) =>
        new(a.SquareMillimetresPerMillimetre * factor);

    /// <summary>A multiple.</summary>
    public static AxleSlackLaw operator *(double factor, AxleSlackLaw a) =>
        new(a.SquareMillimetresPerMillimetre * factor);

    /// <summary>A fraction.</summary>
    public static AxleSlackLaw operator /(AxleSlackLaw a, double divisor) =>
        new(a.SquareMillimetresPerMillimetre / divisor);

    /// <summary>How many times the one goes into the other.</summary>
    public static double operator /(AxleSlackLaw a, AxleSlackLaw b) =>
        a.SquareMillimetresPerMillimetre / b.SquareMillimetresPerMillimetre;

    /// <summary>Whether the first is the smaller.</summary>
    public static bool operator <(AxleSlackLaw a, AxleSlackLaw b) =>
        a.SquareMillimetresPerMillimetre < b.SquareMillimetresPerMillimetre;

    /// <summary>Whether the first is the larger.</summary>
    public static bool operator >(AxleSlackLaw a, AxleSlackLaw b) =>
        a.SquareMillimetresPerMillimetre > b.SquareMillimetresPerMillimetre;

    /// <summary>Whether the first is not the larger.</summary>
    public static bool operator <=(AxleSlackLaw a, AxleSlackLaw b) =>
        a.SquareMillimetresPerMillimetre <= b.SquareMillimetresPerMillimetre;

    /// <summary>Whether the first is not the smaller.</summary>
    public static bool operator >=(AxleSlackLaw a, AxleSlackLaw b) =>
        a.SquareMillimetresPerMillimetre >= b.SquareMillimetresPerMillimetre;
}
