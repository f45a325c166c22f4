using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Toml;

namespace Witnessmark.Bench.Book;

/// <summary>Names in the book that have to exist in it, and orders that have to be possible.</summary>
internal static class BookReferences
{
    public static void Check(BenchBookFile book, Mistakes mistakes)
    {
        foreach (var point in book.Points.Values)
        {
            foreach (var key in new[] { "again-after", "after", "asks-again", "settles-after" })
                OtherPoints(point, key, book);
            Reach(point, book);
            Figures(point, book);
            Provable(point);
        }
        foreach (var reach in book.Reach.Values)
        foreach (var other in reach.Reach.Never.Where(n => !book.Reach.ContainsKey(n)))
            Unknown(reach.Table, reach.Table.At("never-with", other), "reach", other, book.Reach.Keys);
        foreach (var purpose in book.Purposes.Values)
            Purpose(purpose, book);
        foreach (var (key, habit) in book.CommonPractice)
            Proposed(key, habit, book);
        Cycles.Check(book);
    }

    private static void OtherPoints(PointRead point, string key, BenchBookFile book)
    {
        foreach (var other in point.Table.Texts(key).Where(o => !book.Points.ContainsKey(o)))
            Unknown(point.Table, point.Table.At(key, other), "point", other, book.Points.Keys);
    }

    private static void Reach(PointRead point, BenchBookFile book)
    {
        foreach (var state in point.Point.Reach)
            if (!book.Reach.TryGetValue(state, out var known))
                Unknown(point.Table, point.Table.At("reach", state), "reach", state, book.Reach.Keys);
            else if (known.Reach.Never.Intersect(point.Point.Reach).FirstOrDefault() is { } other)
                point.Table.Mistakes.Add(
                    point.Table.At("reach", state),
                    $"\"{state}\" and \"{other}\" at the same time",
                    "states that can be true together"
                );
    }

    private static void Figures(PointRead point, BenchBookFile book)
    {
        foreach (var key in point.Point.Figures)
            Known(key, point.Table.At("figures", key));
        foreach (var item in ConsumableList.Items(point.Table).OfType<TomlTable>())
            if (item.Has("figure"))
                Known(item.Text("figure"), item.At("figure"));
        if (point.Point.JudgedBy is not { Length: > 0 } judgedBy || !Known(judgedBy, point.Table.At("judged-by")))
            return;
        var unit = book.FigureKeys[judgedBy].Key.Unit;
        if (point.Point.Reading.JudgedIn is { } dimension && dimension != unit.Dimension)
            point.Table.Wrong(
                "judged-by",
                $"\"{judgedBy}\" measures {unit}, the point is read in {point.Point.Reading.ReadIn}",
                "a figure key of that kind, or another unit of the reading"
            );

        bool Known(string key, Place at)
        {
            if (key.Length > 0 && !book.FigureKeys.ContainsKey(key))
                Unknown(point.Table, at, "figure key", key, book.FigureKeys.Keys);
            return book.FigureKeys.ContainsKey(key);
        }
    }

    /// <summary>A safety point that is measured holds the job until a figure proves it; without one it would hold for ever.</summary>
    private static void Provable(PointRead point)
    {
        if (point.Point is { Safety: true, JudgedBy: null, Reading.IsJudgedByNumber: true })
            point.Table.Mistakes.Add(
                point.Table.Place,
                $"safety point \"{point.Point.Id}\" is measured and no figure judges it",
                "judged-by = the key of a figure"
            );
    }

    private static void Purpose(PurposeRead purpose, BenchBookFile book)
    {
        List<string> done = [];
        var plan = purpose.Plan.Select(p => p.Point).ToList();
        foreach (var id in plan)
        {
            if (!book.Points.TryGetValue(id, out var point))
                Unknown(purpose.Table, purpose.Table.KeyAt(id), "point", id, book.Points.Keys);
            else if (point.Point.After.FirstOrDefault(a => plan.Contains(a) && !done.Contains(a)) is { } late)
                purpose.Table.Mistakes.Add(
                    purpose.Table.KeyAt(id),
                    $"\"{id}\" before \"{late}\", which has to come first",
                    $"{id} below {late}"
                );
            done.Add(id);
        }
    }

    private static void Proposed(string key, CommonPracticeRead habit, BenchBookFile book)
    {
        if (!book.FigureKeys.TryGetValue(key, out var known))
            Unknown(habit.Table, habit.Table.Place, "figure key", key, book.FigureKeys.Keys);
        else if (habit.Habit?.Figure is { } figure && figure.Unit.Dimension != known.Key.Unit.Dimension)
            habit.Table.Mistakes.Add(
                habit.Table.Place,
                $"common practice for \"{key}\" is in {figure.Unit}, the figure key in {known.Key.Unit}",
                "a unit of that kind"
            );
        else if (habit.Habit?.Figure is { Kind: FigureKind.Torque or FigureKind.Amount } other)
            habit.Table.Mistakes.Add(
                habit.Table.Place,
                $"common practice for \"{key}\" is {other.Short}",
                "range, min, max or target: nobody's habit tightens a bolt or fills an engine"
            );
    }

    private static void Unknown(TomlTable table, Place at, string what, string name, IEnumerable<string> known) =>
        table.Mistakes.Add(at, $"there is no {what} \"{name}\"", Nearest.InWords(name, [.. known]));
}
