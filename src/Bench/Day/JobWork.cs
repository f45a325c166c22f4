using Witnessmark.Bench.Book;
using Witnessmark.Bench.Times;

namespace Witnessmark.Bench.Day;

/// <summary>
/// How long the work takes that is left of a job: the one place where the day plan gets its durations. Point after point in the order
/// of the plan, each state of the machine brought about once. Where a step ends the bench book's times decide, so that it ends there
/// on every device; how long it takes, the times that the shop has learnt.
/// </summary>
public static class JobWork
{
    /// <summary>A wait shorter than this is not worth walking to another machine: it counts as hands-on. Common practice, no source.</summary>
    public const int WorthLeaving = 10;

    /// <summary>A stretch of work ends at the first point after this, so that one can go to lunch. Common practice, no source.</summary>
    public const int Stretch = 90;

    /// <summary>The steps of the points that are still to be done.</summary>
    /// <param name="open">The points, in the order of the plan.</param>
    /// <param name="book">The bench book.</param>
    /// <param name="times">How long each takes; left out: as the book says.</param>
    public static IReadOnlyList<DayStep> Of(IReadOnlyList<Point> open, BenchBook book, PlanTimes? times = null)
    {
        times ??= PlanTimes.ByTheBook;
        List<DayStep> steps = [];
        var brought = new HashSet<string>(StringComparer.Ordinal);
        var (first, last, hands, byBook) = ("", "", TimeSpan.Zero, TimeSpan.Zero);
        foreach (var point in open)
        {
            if (byBook == TimeSpan.Zero)
                first = point.Title;
            last = point.Title;
            var reached = Reached(point, book, brought);
            var leave = point.Waits.TotalMinutes >= WorthLeaving;
            hands += times.Hands(point) + reached + (leave ? TimeSpan.Zero : times.Waits(point));
            byBook += point.Hands + reached + (leave ? TimeSpan.Zero : point.Waits);
            if (leave || byBook.TotalMinutes >= Stretch)
                Close(leave ? times.Waits(point) : TimeSpan.Zero, leave);
        }
        Close(TimeSpan.Zero, false);
        return steps;

        void Close(TimeSpan waits, bool left)
        {
            if (byBook > TimeSpan.Zero || left)
                steps.Add(
                    new(
                        first == last ? Sentence.Of(first) : (Sentence)$"{first} to {last}",
                        Math.Max(1, Minutes(hands)),
                        Minutes(waits)
                    )
                );
            (hands, byBook) = (TimeSpan.Zero, TimeSpan.Zero);
        }
    }

    /// <summary>What whoever does these points must be able to do.</summary>
    public static IReadOnlyList<string> Skills(IReadOnlyList<Point> open) =>
        [.. open.Select(p => p.Skill).OfType<string>().Distinct().Order(StringComparer.Ordinal)];

    private static TimeSpan Reached(Point point, BenchBook book, HashSet<string> brought) =>
        point
            .Reach.Where(brought.Add)
            .Select(name => book.Reach.GetValueOrDefault(name))
            .Aggregate(TimeSpan.Zero, (sum, reach) => sum + (reach?.Set ?? default) + (reach?.Clear ?? default));

    private static int Minutes(TimeSpan time) => (int)Math.Ceiling(time.TotalMinutes);
}
