using Witnessmark.Bench.Book;
using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Machines;
using Witnessmark.Handbook.Tyres;

namespace Witnessmark.Bench.AtThePoint;

/// <summary>
/// What the law of the shop's place demands where a figure sheet says nothing. It judges nothing until somebody has looked at it and
/// takes it for one job; the law in force comes before the table.
/// </summary>
/// <param name="Figure">The figure, with jurisdiction and clause as its origin.</param>
/// <param name="Place">The place by its name: <c>Germany</c>.</param>
public sealed record LegalMinimum(Figure Figure, string Place)
{
    /// <summary>The figure of the law for a key.</summary>
    /// <param name="key">The key that a sheet lacks.</param>
    /// <param name="bench">The shop, which says whose law counts.</param>
    /// <param name="sheet">The machine's sheet.</param>
    /// <param name="machine">The machine; the table knows motorcycles over 50 cc, no quads.</param>
    /// <returns>The figure; null where the table has none for this place and this kind of machine.</returns>
    public static LegalMinimum? Of(FigureKey key, Workbench bench, FigureSheet sheet, Machine machine)
    {
        if (key.Law is null || bench.Workshop.Jurisdiction is not { } place)
            return null;
        if (Workbench.Trait("kind", sheet, machine) != MachineFacts.UsualKind)
            return null;
        var law = TreadLaw
            .Of(place.Code)
            .FirstOrDefault(l => l is { Vehicle: RoadVehicle.Motorcycle, Printed: not null });
        if (law is null)
            return null;
        var draft = new FigureDraft(key.Key, "min", law.Printed!, $"law: {law.Jurisdiction}, {law.Clause}")
        {
            When = law.Asks,
        };
        return draft.Read([]).Figure is { } figure ? new(figure, law.Name) : null;
    }
}
