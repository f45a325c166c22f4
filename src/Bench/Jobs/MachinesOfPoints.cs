using Witnessmark.Bench.Book;
using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Machines;

namespace Witnessmark.Bench.Jobs;

/// <summary>Whether it is said of each machine how it is built where a planned point hangs on it: nobody guesses that.</summary>
internal static class MachinesOfPoints
{
    public static void Check(BenchBookFile book, IReadOnlyList<SheetRead> sheets, IReadOnlyList<WorkshopRead> shops)
    {
        var planned = book
            .Purposes.Values.SelectMany(p => p.Plan)
            .Select(p => book.Points.GetValueOrDefault(p.Point)?.Point)
            .OfType<Point>()
            .DistinctBy(p => p.Id)
            .ToArray();
        foreach (var machine in shops.SelectMany(s => s.Workshop.Machines.Values))
            if (sheets.Where(s => s.Sheet.Id == machine.Sheet).MaxBy(s => s.Sheet.Revision) is { } sheet)
                NotSaid(machine, sheet, planned);
    }

    private static void NotSaid(Machine machine, SheetRead sheet, IReadOnlyList<Point> planned)
    {
        HashSet<string> told = [];
        foreach (var point in planned.Where(p => p.OnlyFor.On(Trait) == Has.NotSaid))
        foreach (var name in point.OnlyFor.Conditions.Keys.Where(c => Trait(c) is null && told.Add(c)))
            sheet.File.Root.Mistakes.Add(
                sheet.File.Root.At("sheet"),
                $"{sheet.File.Name} does not say \"{name}\", on which point \"{point.Id}\" hangs",
                $"under [facts] {name} = {string.Join(" or ", OnlyFor.WordsOf(name).Select(w => Written(name, w)))}"
            );

        string? Trait(string name) => Workbench.Trait(name, sheet.Sheet, machine);
    }

    private static string Written(string name, string word) =>
        MachineFacts.Fitted.Contains(name) ? word : $"\"{word}\"";
}
