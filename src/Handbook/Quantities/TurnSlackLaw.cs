namespace Witnessmark.Handbook.Quantities;

/// <summary>Slack squared given up for each turn of both adjusters, kept in mm² per turn.</summary>
/// <param name="SquareMillimetresPerTurn">The value in mm² per turn.</param>
public readonly record struct TurnSlackLaw(double SquareMillimetresPerTurn) : IQuantity<TurnSlackLaw>
{
    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.AreaPerTurn;

    /// <inheritdoc/>
    public double Base => SquareMillimetresPerTurn;

    /// <inheritdoc/>
    public static TurnSlackLaw OfBase(double value) => new(value);

    /// <summary>The sum.</summary>
    public static TurnSlackLaw operator +(TurnSlackLaw a, TurnSlackLaw b) =>
        new(a.SquareMillimetresPerTurn + b.SquareMillimetresPerTurn);

    /// <summary>The difference.</summary>
    public static TurnSlackLaw operator -(TurnSlackLaw a, TurnSlackLaw b) =>
        new(a.SquareMillimetresPerTurn - b.SquareMillimetresPerTurn);

    /// <summary>The opposite.</summary>
    public static TurnSlackLaw operator -(TurnSlackLaw a) => new(-a.SquareMillimetresPerTurn);

    /// <summary>A multiple.</summary>
    public static TurnSlackLaw operator *(TurnSlackLaw a, double factor) => new(a.SquareMillimetresPerTurn * factor);

    /// <summary>A multiple.</summary>
    public static TurnSlackLaw operator *(double factor, TurnSlackLaw a) => new(a.SquareMillimetresPerTurn * factor);

    /// <summary>A fraction.</summary>
    public static TurnSlackLaw operator /(TurnSlackLaw a, double divisor) => new(a.SquareMillimetresPerTurn / divisor);

    /// <summary>How many times the one goes into the other.</summary>
    public static double operator /(TurnSlackLaw a, TurnSlackLaw b) =>
        a.SquareMillimetresPerTurn / b.SquareMillimetresPerTurn;

    /// <summary>Whether the first is the smaller.</summary>
    public static bool operator <(TurnSlackLaw a, TurnSlackLaw b) =>
        a.SquareMillimetresPerTurn < b.SquareMillimetresPerTurn;

    /// <summary>Whether the first is the larger.</summary>
    public static bool operator >(TurnSlackLaw a, TurnSlackLaw b) =>
        a.SquareMillimetresPerTurn > b.SquareMillimetresPerTurn;

    /// <summary>Whether the first is not the larger.</summary>
    public static bool operator <=(TurnSlackLaw a, TurnSlackLaw b) =>
        a.SquareMillimetresPerTurn <= b.SquareMillimetresPerTurn;

    /// <summary>Whether the first is not the smaller.</summary>
    public static bool operator >=(TurnSlackLaw a, TurnSlackLaw b) =>
        a.SquareMillimetresPerTurn >= b.SquareMillimetresPerTurn;
}
