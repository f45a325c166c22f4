using Witnessmark.Bench.Book;
using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Machines;
using Witnessmark.Bench.Toml;

namespace Witnessmark.Bench.Jobs;

/// <summary>
/// Names that the workshop's shelf and adapters take from book and sheets. Points and sheets have to exist; what a stock item serves may
/// be the shop's own affair, and is told only where it is nearly what the book asks for.
/// </summary>
internal static class NamesOfWorkshop
{
    public static void Check(BenchBookFile book, IReadOnlyList<SheetRead> sheets, IReadOnlyList<WorkshopRead> shops)
    {
        foreach (var shop in shops)
        {
            var (root, workshop) = (shop.File.Root, shop.Workshop);
            foreach (var adapter in workshop.Adapters.Values)
                Known(
                    root.Table("adapters").Table(adapter.Id),
                    "points",
                    adapter.Points,
                    "point",
                    [.. book.Points.Keys]
                );
            if (root.TableOrNothing("second-check") is { } second)
            {
                Known(second, "points", workshop.SecondCheck.Points, "point", [.. book.Points.Keys]);
                Known(
                    second,
                    "groups",
                    workshop.SecondCheck.Groups,
                    "group of the book",
                    [.. book.Points.Values.Select(p => p.Point.Region).Distinct()]
                );
            }
            foreach (var item in workshop.Stock.Values)
            {
                var table = root.Table("stock").Table(item.Id);
                Known(table, "sheets", item.Sheets, "figure sheet", [.. sheets.Select(s => s.Sheet.Id).Distinct()]);
                Serves(table, book);
            }
        }
    }

    private static void Known(
        TomlTable table,
        string key,
        IEnumerable<string> names,
        string what,
        IReadOnlyList<string> known
    )
    {
        foreach (var name in names.Where(n => !known.Contains(n)))
            table.Mistakes.Add(table.At(key, name), $"there is no {what} \"{name}\"", Nearest.InWords(name, known));
    }

    private static void Serves(TomlTable table, BenchBookFile book)
    {
        string[] asked = [.. book.Points.Values.SelectMany(p => p.Point.Consumables).Select(c => c.What).Distinct()];
        foreach (var text in table.Texts("serves").Where(t => !asked.Contains(t)))
            if (Nearest.To(text, asked) is { } near)
                table.Mistakes.Add(table.At("serves", text), $"no point uses up \"{text}\"", $"\"{near}\"");
    }
}
