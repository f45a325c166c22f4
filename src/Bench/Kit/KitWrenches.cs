using Witnessmark.Bench.Book;
using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Machines;
using Witnessmark.Bench.Wording;
using Witnessmark.Handbook.Fasteners;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Kit;

/// <summary>The torque wrench for each fastener, what it is set to, and the adapter between.</summary>
internal static class KitWrenches
{
    private static readonly Unit NewtonMetre = UnitTable.Named("N·m");

    public static IEnumerable<KitLine> Lines(
        IReadOnlyList<Point> points,
        FigureSheet sheet,
        Workshop shop,
        DateOnly day,
        List<Shortage> shortages
    )
    {
        List<Tool> tools = [];
        foreach (var point in points.Where(p => p.Reading.Kind == ReadingKind.Tighten))
        {
            var adapter = shop.Adapters.Values.FirstOrDefault(a => a.Points.Contains(point.Id));
            tools.Add(For(point, adapter, sheet, shop, day, shortages));
            if (adapter is not null)
                tools.Add(new(Sentence.Of(adapter.Name), point.Id, Sentence.Empty));
        }
        return tools
            .GroupBy(t => t.Item)
            .Select(same => new KitLine(
                KitKind.Tool,
                same.Key,
                $"1",
                [.. same.Select(t => t.Point)],
                Sentence.Line(same.Select(t => t.Note).Distinct())
            ));
    }

    private static Tool For(
        Point point,
        WrenchAdapter? adapter,
        FigureSheet sheet,
        Workshop shop,
        DateOnly day,
        List<Shortage> shortages
    )
    {
        var figure = point.JudgedBy is { } key ? sheet.Figures.GetValueOrDefault(key) : null;
        if (figure is not { Value: { } value, Unit.Dimension: Dimension.Torque })
            return new($"Torque wrench", point.Id, $"{point.Title}: the figure sheet has no torque; look it up first.");
        var torque = new Torque(figure.Unit.ToBase(value));
        var wrenches = shop.Instruments.Values.Where(i => i.Kind == "torque").ToArray();
        var fit = wrenches
            .Where(w => !point.Safety || Calibration.Proves(w, day))
            .Select(w => (Wrench: w, Set: Setting(torque, adapter, w)))
            .Where(x => x.Set is { } set && Covers(x.Wrench, set))
            // one in date before one that is not, where no safety hangs on it
            .OrderBy(x => Calibration.On(x.Wrench, day))
            .ThenBy(x => x.Wrench.PermissibleError)
            .ThenBy(x => x.Wrench.Unit.ToBase(x.Wrench.Max ?? 0))
            .FirstOrDefault();
        if (fit is { Wrench: { } wrench, Set: { } setting })
            return new(Sentence.Of(wrench.Name), point.Id, Note(point, adapter, torque, setting, wrench, day));
        var why = WhyNone(point, adapter, torque, wrenches, day);
        shortages.Add(new($"Torque wrench", Said(torque, 1), $"none that will do", [point.Id], null, why));
        return new($"Torque wrench", point.Id, why);
    }

    /// <summary>What the scale shows; null when the wrench's lever is not on record or the adapter reaches back to the hand.</summary>
    private static Torque? Setting(Torque torque, WrenchAdapter? adapter, ShopInstrument wrench)
    {
        if (adapter is null)
            return torque;
        if (wrench.Lever is not { } lever)
            return null;
        var extension = new WrenchExtension(lever, adapter.Extension, adapter.Angle);
        return extension.ReachesPastTheHand ? null : TorqueSetting.For(torque, extension).Setting;
    }

    private static bool Covers(ShopInstrument wrench, Torque setting) =>
        TorqueTool
            .For(
                setting,
                [
                    new(
                        wrench.Id,
                        new(wrench.Unit.ToBase(wrench.Min ?? 0)),
                        new(wrench.Unit.ToBase(wrench.Max ?? 0)),
                        new(wrench.PermissibleError)
                    ),
                ]
            )
            .Holds;

    private static Sentence Note(
        Point point,
        WrenchAdapter? adapter,
        Torque torque,
        Torque setting,
        ShopInstrument wrench,
        DateOnly day
    )
    {
        var set = Numerals.With(wrench.Unit.FromBase(setting.NewtonMetres), wrench.Unit, wrench.Decimals);
        Sentence with = adapter is null
            ? Sentence.Empty
            : (Sentence)$" with {adapter.Name}, so that the nut gets {Said(torque, 1)}, which is what is written down";
        Sentence doubt = Calibration.Doubt(wrench, day) is { } said ? (Sentence)$" {said}" : Sentence.Empty;
        return $"{point.Title}: set {set}{with}.{doubt}";
    }

    private static Sentence WhyNone(
        Point point,
        WrenchAdapter? adapter,
        Torque torque,
        IReadOnlyList<ShopInstrument> wrenches,
        DateOnly day
    )
    {
        var overdue = wrenches.Where(w => point.Safety && !Calibration.Proves(w, day)).ToArray();
        var levers = adapter is not null && wrenches.All(w => w.Lever is null);
        Sentence with = adapter is null ? Sentence.Empty : (Sentence)$" with {adapter.Name}";
        Sentence none =
            overdue.Length == 0
                ? (Sentence)$"{point.Title}: no wrench of the shop covers {Said(torque, 1)}{with}."
                : (Sentence)$"{point.Title}: no wrench of the shop covers {Said(torque, 1)}{with} in calibration.";
        Sentence way = levers
            ? (Sentence)$"The setting with it is not known: no wrench has its \"lever\" on record."
            : (Sentence)$"Borrow or hire one that does.";
        return Sentence.Line(overdue.Select(w => Calibration.Doubt(w, day)).Prepend(none).Append(way));
    }

    private static Sentence Said(Torque torque, int decimals) =>
        Numerals.With(torque.NewtonMetres, NewtonMetre, decimals);

    private sealed record Tool(Sentence Item, string Point, Sentence Note);
}
