namespace Witnessmark.Handbook.Quantities;

/// <summary>A value of one dimension, kept in that dimension's base unit (the unit with factor 1 in <see cref="UnitTable"/>).</summary>
/// <typeparam name="TSelf">The quantity itself.</typeparam>
public interface IQuantity<TSelf>
    where TSelf : struct, IQuantity<TSelf>
{
    /// <summary>What kind of quantity this is.</summary>
    static abstract Dimension Dimension { get; }

    /// <summary>The value in the base unit.</summary>
    double Base { get; }

    /// <summary>Makes the quantity from a value in the base unit.</summary>
    static abstract TSelf OfBase(double value);
}
