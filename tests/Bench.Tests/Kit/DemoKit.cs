using Witnessmark.Bench.Book;
using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Kit;
using Witnessmark.Bench.Machines;
using Witnessmark.Bench.Stock;
using Witnessmark.Bench.Tests.Book;
using Witnessmark.Handbook.Quantities;
using TheKit = Witnessmark.Bench.Kit.Kit;

namespace Witnessmark.Bench.Tests.Kit;

/// <summary>Kits of the demo machine, as it is and with one thing changed.</summary>
internal static class DemoKit
{
    public static readonly DateOnly Day = new(2026, 11, 25);
    public static readonly Workbench Demo = DemoFiles.Bench;
    public static readonly FigureSheet Sheet = Demo.Newest("fell-640")!;

    public static string Said(KitLine line) => $"{line.Item}: {line.Quantity} for {string.Join(' ', line.For)}";

    public static string Title(string point) => Demo.Book.Points[point].Title;

    public static KitLine Line(TheKit kit, string item, bool orNull = false) =>
        orNull ? kit.Lines.SingleOrDefault(l => l.Item == item)! : Assert.Single(kit.Lines, l => l.Item == item);

    public static StockMove Came(string item, decimal amount, string? size = null) =>
        new($"{item}{size}{amount}", StockMoveKind.Received, new(item, size), amount, "Ines Tallow", "2026-11-25");

    public static Figure Range(double? min, double? max) =>
        new(
            "x",
            FigureKind.Range,
            UnitTable.Named("mm"),
            min,
            max,
            null,
            "",
            null,
            null,
            new(OriginKind.Maker, "p. 1")
        );

    public static TheKit For(string[] points, Shelf? stock = null, string? job = null) =>
        For([.. points.Select(p => Demo.Book.Points[p])], stock, job);

    public static TheKit For(Point[] points, Shelf? stock = null, string? job = null) =>
        TheKit.For(points, Sheet, Demo.Workshop, stock, Day, job);

    public static TheKit Of(Workshop shop, Point point) => TheKit.For([point], Sheet, shop, null, Day);

    public static TheKit WithFigure(string point, Figure figure)
    {
        var key = Demo.Book.Points[point].JudgedBy!;
        var figures = Sheet.Figures.ToDictionary();
        figures[key] = figure;
        return WithSheet([point], Sheet with { Figures = figures }, null);
    }

    public static Workshop Without(string instrument) =>
        Demo.Workshop with
        {
            Instruments = Demo.Workshop.Instruments.Where(i => i.Key != instrument).ToDictionary(),
        };

    public static TheKit With(Func<ShopInstrument, ShopInstrument> change, string point) =>
        Of(
            Demo.Workshop with
            {
                Instruments = Demo.Workshop.Instruments.ToDictionary(i => i.Key, i => change(i.Value)),
            },
            Demo.Book.Points[point]
        );

    public static TheKit WithSheet(string[] points, FigureSheet sheet, Shelf? stock) =>
        TheKit.For(points.Select(p => Demo.Book.Points[p]), sheet, Demo.Workshop, stock, Day);
}
