namespace Witnessmark.Handbook.Quantities;

/// <summary>Travel for each turn of an adjuster, kept in mm per turn.</summary>
/// <param name="MillimetresPerTurn">The value in mm per turn.</param>
public readonly record struct TurnTravel(double MillimetresPerTurn) : IQuantity<TurnTravel>
{
    /// <inheritdoc/>
    public static Dimension Dimension => Dimension.LengthPerTurn;

    /// <inheritdoc/>
    public double Base => MillimetresPerTurn;

    /// <inheritdoc/>
    public static TurnTravel OfBase(double value) => new(value);

    /// <summary>The sum.</summary>
    public static TurnTravel operator +(TurnTravel a, TurnTravel b) => new(a.MillimetresPerTurn + b.MillimetresPerTurn);

    /// <summary>The difference.</summary>
    public static TurnTravel operator -(TurnTravel a, TurnTravel b) => new(a.MillimetresPerTurn - b.MillimetresPerTurn);

    /// <summary>The opposite.</summary>
    public static TurnTravel operator -(TurnTravel a) => new(-a.MillimetresPerTurn);

    /// <summary>A multiple.</summary>
    public static TurnTravel operator *(TurnTravel a, double factor) => new(a.MillimetresPerTurn * factor);

    /// <summary>A multiple.</summary>
    public static TurnTravel operator *(double factor, TurnTravel a) => new(a.MillimetresPerTurn * factor);

    /// <summary>A fraction.</summary>
    public static TurnTravel operator /(TurnTravel a, double divisor) => new(a.MillimetresPerTurn / divisor);

    /// <summary>How many times the one goes into the other.</summary>
    public static double operator /(TurnTravel a, TurnTravel b) => a.MillimetresPerTurn / b.MillimetresPerTurn;

    /// <summary>Whether the first is the smaller.</summary>
    public static bool operator <(TurnTravel a, TurnTravel b) => a.MillimetresPerTurn < b.MillimetresPerTurn;

    /// <summary>Whether the first is the larger.</summary>
    public static bool operator >(TurnTravel a, TurnTravel b) => a.MillimetresPerTurn > b.MillimetresPerTurn;

    /// <summary>Whether the first is not the larger.</summary>
    public static bool operator <=(TurnTravel a, TurnTravel b) => a.MillimetresPerTurn <= b.MillimetresPerTurn;

    /// <summary>Whether the first is not the smaller.</summary>
    public static bool operator >=(TurnTravel a, TurnTravel b) => a.MillimetresPerTurn >= b.MillimetresPerTurn;
}
