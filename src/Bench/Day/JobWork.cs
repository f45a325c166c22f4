using Witnessmark.Bench.Book;

namespace Witnessmark.Bench.Day;

/// <summary>
/// How long the work takes that is left of a job: the one place where the day plan gets its durations. The bench book's, point
/// after point in the order of the plan, each state of the machine brought about once: the same on every device, so that the shop's
/// plan fits the board that it is shown on.
/// </summary>
public static class JobWork
{
    /// <summary>A wait shorter than this is not worth walking to another machine: it counts as hands-on. Common practice, no source.</summary>
    public const int WorthLeaving = 10;

    /// <summary>A stretch of work ends at the first point after this, so that one can go to lunch. Common practice, no source.</summary>
    public const int Stretch = 90;

    /// <summary>The steps of the points that are still to be done.</summary>
    public static IReadOnlyList<DayStep> Of(IReadOnlyList<Point> open, BenchBook book)
    {
        List<DayStep> steps = [];
        var brought = new HashSet<string>(StringComparer.Ordinal);
        var (first, last, hands) = ("", "", TimeSpan.Zero);
        foreach (var point in open)
        {
            if (hands == TimeSpan.Zero)
                first = point.Title;
            last = point.Title;
            hands += point.Hands + Reached(point, book, brought);
            var leave = point.Waits.TotalMinutes >= WorthLeaving;
            if (!leave)
                hands += point.Waits;
            if (leave || hands.TotalMinutes >= Stretch)
                Close(leave ? point.Waits : TimeSpan.Zero);
        }
        Close(TimeSpan.Zero);
        return steps;

        void Close(TimeSpan waits)
        {
            if (hands > TimeSpan.Zero || waits > TimeSpan.Zero)
                steps.Add(
                    new(first == last ? first : $"{first} to {last}", Math.Max(1, Minutes(hands)), Minutes(waits))
                );
            hands = TimeSpan.Zero;
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
