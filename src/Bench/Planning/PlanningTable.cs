using Witnessmark.Bench.Toml;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Planning;

/// <summary>Reads the table <c>[planning]</c> of a shop.</summary>
internal static class PlanningTable
{
    private const int MostMonths = 120;

    /// <summary>The shop's settings; the usual ones where it says nothing.</summary>
    public static PlanSettings Read(TomlTable? table)
    {
        var usual = PlanSettings.Usual;
        if (table is null)
            return usual;
        var probability = table.QuantityOrNothing("wear-probability", Dimension.Number);
        if (probability is { Base: <= 0 or >= 1 })
            table.Wrong("wear-probability", $"\"{probability}\"", "more than 0 % and less than 100 %");
        var distance = table.QuantityOrNothing("next-visit-distance", Dimension.Length);
        if (distance is { Value: <= 0 })
            table.Wrong("next-visit-distance", $"\"{distance}\"", "a distance above zero, e.g. \"6000 km\"");
        var months = table.WholeOrNothing("next-visit-months", 1, MostMonths);
        table.NoOtherKeys();
        return new(
            probability?.Base ?? usual.WearProbability,
            distance?.In(UnitTable.Named("km")).Value ?? usual.NextKilometres,
            months ?? usual.NextMonths
        );
    }
}
