namespace Witnessmark.Handbook.Quantities;

/// <summary>One unit: value in base = value × Factor + Offset.</summary>
/// <param name="Symbol">As written in the contract and on paper.</param>
/// <param name="Dimension">What it measures.</param>
/// <param name="Factor">Base units in one of these.</param>
/// <param name="Offset">Base value of zero of these; only temperatures have one.</param>
public sealed record Unit(string Symbol, Dimension Dimension, double Factor, double Offset = 0)
{
    /// <summary>A value in this unit, in the base unit.</summary>
    public double ToBase(double value) => value * Factor + Offset;

    /// <summary>A value in the base unit, in this unit.</summary>
    public double FromBase(double value) => (value - Offset) / Factor;

    /// <inheritdoc/>
    public override string ToString() => Symbol;
}
