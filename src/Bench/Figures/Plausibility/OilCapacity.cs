using Witnessmark.Bench.Wording;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Figures.Plausibility;

/// <summary>Whether an oil capacity fits the class of the engine.</summary>
/// <remarks>
/// <para><b>Formula.</b> One cylinder holds 0.5 to 3.5 L of engine oil, each further one up to 1 L more.</para>
/// <para><b>Source.</b> Common practice, no source: a wide net that catches a quart for a pint and a gallon for a litre, no more.</para>
/// </remarks>
internal static class OilCapacity
{
    private const double Least = 0.5;
    private const double MostOfOne = 3.5;
    private const double MoreEach = 1;

    /// <summary>The doubt in words, or null.</summary>
    public static Sentence? Doubt(Figure figure, FigureSheet sheet)
    {
        if (figure is not { Key: "oil.capacity", Value: { } value, Unit.Dimension: Dimension.Volume })
            return null;
        var litre = UnitTable.Named("L");
        var litres = litre.FromBase(figure.Unit.ToBase(value));
        var most = MostOfOne + (sheet.Cylinders - 1) * MoreEach;
        return litres < Least || litres > most
            ? (Sentence)
                $"{figure.AsPrinted} ({Numerals.With(litres, litre, 2)}) is unusual for an engine with {Cylinders(sheet)} ({Least:0.#} to {most:0.#} L): look at the unit"
            : null;
    }

    private static Sentence Cylinders(FigureSheet sheet) =>
        sheet.Cylinders == 1 ? (Sentence)$"one cylinder" : (Sentence)$"{sheet.Cylinders} cylinders";
}
