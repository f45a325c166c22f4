using Witnessmark.Bench.Book;

namespace Witnessmark.Bench.Planning;

/// <summary>
/// Points that work at another one makes necessary: a nut that is tightened moves the axle, so slack and alignment are read
/// again. Work is what is tightened, filled or done, and what has to be corrected because it was read outside.
/// </summary>
internal static class NecessaryReasons
{
    public static IEnumerable<(string Point, Reason Reason)> Of(
        BenchBook book,
        IReadOnlyList<(string Point, Reason Reason)> planned,
        Func<string, bool> has
    )
    {
        var outside = planned.Where(p => p.Reason.Because == Because.Outside).Select(p => p.Point).ToHashSet();
        var known = planned.Select(p => p.Point).ToHashSet();
        Queue<string> open = new(known.Order(StringComparer.Ordinal));
        while (open.TryDequeue(out var id))
        {
            if (!IsWork(book.Points[id], outside))
                continue;
            foreach (var point in book.Points.Values.Where(p => p.AgainAfter.Contains(id) && has(p.Id)))
            {
                // what a purpose takes anyway needs no second why
                if (planned.Any(p => p.Point == point.Id && p.Reason.Because == Because.Purpose))
                    continue;
                yield return (point.Id, new(Because.Necessary, InWords(book.Points[id], outside)));
                if (known.Add(point.Id))
                    open.Enqueue(point.Id);
            }
        }
    }

    private static bool IsWork(Point point, HashSet<string> outside) =>
        point.Reading.IsWork || (outside.Contains(point.Id) && point.CorrectedBy is not null);

    private static Sentence InWords(Point worked, HashSet<string> outside) =>
        outside.Contains(worked.Id) && !worked.Reading.IsWork
            ? (Sentence)$"{worked.Title} was read outside: correcting it asks for this again."
            : (Sentence)$"{worked.Title} is in the plan, and asks for this again.";
}
