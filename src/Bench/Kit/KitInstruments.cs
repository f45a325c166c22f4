using Witnessmark.Bench.Book;
using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Machines;
using Witnessmark.Bench.Wording;

namespace Witnessmark.Bench.Kit;

/// <summary>
/// The instrument for each reading: the usual one while it is in calibration, reaches, and can decide; else the coarsest of the shop that
/// does, because the finest is the slowest to read and the first to be broken. Whether it can be put on there is the technician's to see.
/// </summary>
internal static class KitInstruments
{
    private const int MostOthers = 2;

    public static IEnumerable<KitLine> Lines(
        IReadOnlyList<Point> points,
        FigureSheet sheet,
        Workshop shop,
        DateOnly day,
        List<Shortage> shortages
    ) =>
        points
            .Select(p => For(new(p, FigureOf(p, sheet), day), shop, shortages))
            .OfType<Chosen>()
            .GroupBy(c => c.Item)
            .Select(same => new KitLine(
                KitKind.Instrument,
                same.Key,
                $"1",
                [.. same.Select(c => c.Point)],
                Sentence.Line(same.Select(c => c.Note).Distinct())
            ));

    private static Figure? FigureOf(Point point, FigureSheet sheet) =>
        point.JudgedBy is { } key ? sheet.Figures.GetValueOrDefault(key) : null;

    private static Chosen? For(Asked asked, Workshop shop, List<Shortage> shortages)
    {
        var usual = asked.Point.Reading.Instrument is { } id ? shop.Instruments.GetValueOrDefault(id) : null;
        var could = shop.Instruments.Values.Where(asked.Fits).ToArray();
        if (could.Length == 0 && asked.Point.Reading.Instrument is null)
            return null; // nothing is read with an instrument here
        if (usual is not null && asked.WhyNot(usual) is null)
            return new(Named(usual), asked.Point.Id, asked.Note(usual));
        var others = could
            .Where(i => i != usual && asked.WhyNot(i) is null)
            .OrderByDescending(i => asked.Uncertainty(i))
            .ThenBy(i => i.Id, StringComparer.Ordinal)
            .ToArray();
        Sentence why = usual is null ? Sentence.Empty : (Sentence)$" {asked.WhyNot(usual)}";
        if (others.Length > 0)
            return new(Named(others[0]), asked.Point.Id, Instead(asked, others, why));
        Sentence none =
            $"{asked.Point.Title}:{why} Nothing else in the shop can decide it: borrow a finer one, or one in calibration.";
        shortages.Add(new(Named(usual), $"1", $"none that will do", [asked.Point.Id], null, none));
        return new(Named(usual), asked.Point.Id, none);
    }

    private static Sentence Named(ShopInstrument? instrument) =>
        instrument is null ? (Sentence)$"Instrument" : Sentence.Of(instrument.Name);

    private static Sentence Instead(Asked asked, IReadOnlyList<ShopInstrument> others, Sentence why)
    {
        Sentence take = others switch
        {
            [var one] => $"{asked.Point.Title}:{why} Take {one.Name}.",
            [var one, var other] => $"{asked.Point.Title}:{why} Take {one.Name}, or {other.Name}.",
            _ => $"{asked.Point.Title}:{why} Take {others[0].Name}, or {others[1].Name} or {others[MostOthers].Name}.",
        };
        return Sentence.Line(take, asked.Note(others[0]));
    }

    private sealed record Chosen(Sentence Item, string Point, Sentence Note);

    /// <summary>A point that is to be read on a day.</summary>
    private sealed record Asked(Point Point, Figure? Figure, DateOnly Day)
    {
        public bool Fits(ShopInstrument instrument) =>
            Point.Reading.Kind switch
            {
                ReadingKind.Level => instrument.Kind == "level",
                ReadingKind.Seen
                or ReadingKind.Done
                or ReadingKind.Vin
                or ReadingKind.TyreDate
                or ReadingKind.Tighten => false,
                _ => instrument.Kind == "measure" && instrument.Unit.Dimension == Point.Reading.Unit?.Dimension,
            };

        public double Uncertainty(ShopInstrument instrument) =>
            Decides.Uncertainty(Point.Reading, Figure?.Unit ?? instrument.Unit, instrument);

        /// <summary>Why it will not do, in a sentence; null when it will.</summary>
        public Sentence? WhyNot(ShopInstrument instrument) =>
            Point.Safety && !Calibration.Proves(instrument, Day) ? Calibration.Doubt(instrument, Day)
            : Figure is not { Limit: { } limit } figure || figure.Unit.Dimension != instrument.Unit.Dimension ? null
            : !Reaches(instrument, limit.Min, limit.Max, figure)
                ? (Sentence)$"{instrument.Name} does not reach: its range ends before the figure does."
            : Decides.At(Point, figure, instrument) == Decision.Never
                ? (Sentence)
                    $"The rule cannot decide this with {instrument.Name}: it reads to ± {Numerals.Apart(2 * Uncertainty(instrument), figure.Unit)}, and {Allowed.By(figure)}."
            : null;

        public Sentence Note(ShopInstrument instrument) => Sentence.Line(Repeats(instrument), Undated(instrument));

        private Sentence? Undated(ShopInstrument instrument) =>
            Point.Safety ? Calibration.Doubt(instrument, Day) : null;

        private Sentence? Repeats(ShopInstrument instrument) =>
            Figure is { } figure
            && figure.Unit.Dimension == instrument.Unit.Dimension
            && Decides.At(Point, figure, instrument) == Decision.WithRepeats
                ? (Sentence)$"{Point.Title}: three readings a side, one does not decide it."
                : null;

        /// <summary>Whether the scale goes as far as the ends of the limit; what is a difference of readings lies anywhere on it.</summary>
        private bool Reaches(ShopInstrument instrument, double? min, double? max, Figure figure)
        {
            if (Point.Reading.Kind is ReadingKind.Sides or ReadingKind.Level)
                return true;
            double Base(double end) => figure.Unit.ToBase(end);
            var low = instrument.Min is { } from ? instrument.Unit.ToBase(from) : double.NegativeInfinity;
            var high = instrument.Max is { } to ? instrument.Unit.ToBase(to) : double.PositiveInfinity;
            return Point.Reading.Kind is ReadingKind.Marks or ReadingKind.Round
                ? Base(max ?? min ?? 0) <= high - low
                : (min is null || (Base(min.Value) >= low && Base(min.Value) <= high))
                    && (max is null || (Base(max.Value) >= low && Base(max.Value) <= high));
        }
    }
}
