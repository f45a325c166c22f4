using Witnessmark.Bench.Book;
using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Machines;
using Witnessmark.Bench.Toml;

namespace Witnessmark.Bench.Jobs;

/// <summary>What no file can know alone: names that have to exist in another one.</summary>
internal static class AcrossFiles
{
    public static void Check(
        BenchBookFile book,
        IReadOnlyList<SheetRead> sheets,
        IReadOnlyList<WorkshopRead> shops,
        Mistakes mistakes
    )
    {
        OneShop(shops, mistakes);
        foreach (var sheet in sheets.GroupBy(s => (s.Sheet.Id, s.Sheet.Revision)).SelectMany(g => g.Skip(1)))
            sheet
                .File.Root.Table("sheet")
                .Wrong(
                    "revision",
                    $"\"{sheet.Sheet.Id}\" revision {sheet.Sheet.Revision} a second time",
                    "each revision in one file"
                );
        foreach (var point in book.Points.Values)
            Instrument(point, shops, mistakes);
        BookReferences.Check(book, mistakes);
        foreach (var sheet in sheets)
            Schedule(sheet, book);
        foreach (var machine in shops.SelectMany(s => s.Workshop.Machines.Values, (shop, machine) => (shop, machine)))
            MachineSheet(machine.shop, machine.machine, sheets);
        MachinesOfPoints.Check(book, sheets, shops);
        NamesOfWorkshop.Check(book, sheets, shops);
        FiguresOfPoints.Check(book, sheets, mistakes);
    }

    private static void OneShop(IReadOnlyList<WorkshopRead> shops, Mistakes mistakes)
    {
        if (shops.Count == 0)
            mistakes.Add(new("shop.toml", 1, 1), "no such file", "shop.toml with a table [workshop]");
        foreach (var shop in shops.Skip(1))
            mistakes.Add(
                new(shop.File.Name, 1, 1),
                "a second workshop",
                $"one only (the first is {shops[0].File.Name})"
            );
    }

    /// <summary>An instrument that the shop does not have is chosen at the bench; one that is nearly named is a slip.</summary>
    private static void Instrument(PointRead point, IReadOnlyList<WorkshopRead> shops, Mistakes mistakes)
    {
        if (point.Point.Reading.Instrument is not { Length: > 0 } instrument || shops.Count == 0)
            return;
        var reading = point.Table.Table("reading");
        var known = shops[0].Workshop.Instruments;
        var found = known.GetValueOrDefault(instrument);
        if (found is null && Nearest.To(instrument, known.Keys) is not null)
            Unknown(mistakes, reading.At("instrument"), "instrument", instrument, known.Keys);
        else if (found is not null && point.Point.Reading.Unit is { } unit && unit.Dimension != found.Unit.Dimension)
            reading.Wrong(
                "instrument",
                $"\"{instrument}\" reads {found.Unit}, the point is read in {unit}",
                "an instrument for that unit"
            );
    }

    private static void Schedule(SheetRead sheet, BenchBookFile book)
    {
        foreach (var work in sheet.File.Root.TableList("schedule"))
            if (work.TextOrNothing("point") is { Length: > 0 } point && !book.Points.ContainsKey(point))
                Unknown(work.Mistakes, work.At("point"), "point", point, book.Points.Keys);
    }

    private static void MachineSheet(WorkshopRead shop, Machine machine, IReadOnlyList<SheetRead> sheets)
    {
        if (machine.Sheet.Length > 0 && sheets.All(s => s.Sheet.Id != machine.Sheet))
            Unknown(
                shop.File.Root.Mistakes,
                shop.File.Root.Table("machines").Table(machine.Id).At("sheet"),
                "figure sheet",
                machine.Sheet,
                sheets.Select(s => s.Sheet.Id)
            );
    }

    private static void Unknown(Mistakes mistakes, Place at, string what, string name, IEnumerable<string> known) =>
        mistakes.Add(at, $"there is no {what} \"{name}\"", Nearest.InWords(name, [.. known.Distinct()]));
}
