using Witnessmark.Handbook.Quantities;
using Witnessmark.Handbook.ReferenceData;

namespace Witnessmark.Handbook.Fluids;

/// <summary>Viscosity index: how little an oil thins with warmth, 100 and above being little.</summary>
/// <remarks>
/// <para><b>Formula.</b> With U at 40 °C and Y at 100 °C: L and H from the table, in straight lines between rows; above 70 mm²/s
/// L = 0.8353Y² + 14.67Y − 216 and H = 0.1684Y² + 11.85Y − 97. Procedure A, U &gt; H: VI = 100·(L − U)/(L − H). Procedure B, else:
/// VI = (10^N − 1)/0.00715 + 100, N = (log H − log U)/log Y. Rounded to the nearest whole number, half to even.</para>
/// <para><b>Units.</b> Viscosities in mm²/s, the index a pure number.</para>
/// <para><b>Source.</b> ASTM D2270-10 (2016), procedures A and B, table 1 (viscosity-index.csv), as reprinted.</para>
/// <para><b>Valid when</b> the oil has 2 mm²/s or more at 100 °C; below, the index is not defined. Nothing is said about shear: a worn
/// multigrade oil keeps its index on paper longer than in the engine.</para>
/// </remarks>
public static class ViscosityIndex
{
    /// <summary>Below this at 100 °C the index is not defined.</summary>
    public static readonly Viscosity Thinnest = new(2);

    private static readonly PublishedTable Table = PublishedTable.Read("viscosity-index.csv");
    private static readonly PublishedCurve LowIndex = new(Table.Rows, "y", "l");
    private static readonly PublishedCurve HighIndex = new(Table.Rows, "y", "h");

    /// <summary>The index of one oil.</summary>
    /// <param name="at40">U, kinematic viscosity at 40 °C.</param>
    /// <param name="at100">Y, kinematic viscosity at 100 °C, less than U.</param>
    /// <returns>Refused as <c>below2</c> or <c>notThinning</c>.</returns>
    public static Answer<IndexedOil> Of(Viscosity at40, Viscosity at100)
    {
        if (at100 < Thinnest)
            return Answer<IndexedOil>.Refuse(
                "below2",
                $"The viscosity index is not defined for an oil thinner than 2 mm²/s at 100 °C."
            );
        if (at100 >= at40)
            return Answer<IndexedOil>.Refuse(
                "notThinning",
                $"The oil would not get thinner from 40 °C to 100 °C, which no oil does: check whether the two figures are swapped."
            );
        var (u, y) = (at40.SquareMillimetresPerSecond, at100.SquareMillimetresPerSecond);
        var low = LowIndex.At(y) ?? 0.8353 * y * y + 14.67 * y - 216;
        var high = HighIndex.At(y) ?? 0.1684 * y * y + 11.85 * y - 97;
        var procedure = u > high ? 'A' : 'B';
        var exact =
            procedure == 'A'
                ? 100 * (low - u) / (low - high)
                : (Math.Pow(10, Math.Log(high / u) / Math.Log(y)) - 1) / 0.00715 + 100;
        return new IndexedOil(Math.Round(exact, MidpointRounding.ToEven), procedure, new(low), new(high));
    }
}

/// <summary>The viscosity index with what it was reckoned from.</summary>
/// <param name="Index">The index, rounded.</param>
/// <param name="Procedure">A up to 100, B from 100.</param>
/// <param name="Low">L, viscosity at 40 °C of an oil of index 0 that is as thick at 100 °C.</param>
/// <param name="High">H, the same of an oil of index 100.</param>
public sealed record IndexedOil(double Index, char Procedure, Viscosity Low, Viscosity High);
