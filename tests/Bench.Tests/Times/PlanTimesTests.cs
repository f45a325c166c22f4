using Witnessmark.Bench.Planning.Order;
using Witnessmark.Bench.Tests.Book;
using Witnessmark.Bench.Times;

namespace Witnessmark.Bench.Tests.Times;

/// <summary>What was learnt is what is planned with.</summary>
public class PlanTimesTests
{
    private static readonly Bench.Book.BenchBook Book = DemoFiles.Bench.Book;
    private static readonly Bench.Book.Point Drain = Book.Points["drain-plug"];

    [Fact]
    public void Without_a_timed_doing_the_books_time_stands_to_the_second()
    {
        var times = new PlanTimes(LearntTimes.From(Book, []), "Ines Tallow");
        Assert.All(Book.Points.Values, p => Assert.Equal((p.Hands, p.Waits), (times.Hands(p), times.Waits(p))));
        Assert.Equal(Drain.Hands, PlanTimes.ByTheBook.Hands(Drain));
    }

    [Fact]
    public void Each_technician_plans_with_the_own_time_and_the_shop_with_all()
    {
        var learnt = LearntTimes.From(Book, Doings("Ines Tallow", 16, 1.5).Concat(Doings("Bram Okello", 16, 3)));
        var (ines, bram, shop) = (
            new PlanTimes(learnt, "Ines Tallow").Hands(Drain),
            new PlanTimes(learnt, "Bram Okello").Hands(Drain),
            new PlanTimes(learnt, null).Hands(Drain)
        );
        Assert.True(Drain.Hands < ines && ines < shop && shop < bram, $"{Drain.Hands} {ines} {shop} {bram}");
        Assert.All([ines, bram, shop], time => Assert.Equal(0, time.TotalSeconds % 60));
        Assert.Equal(learnt.Hands(Drain.Id, "Bram Okello").Time.TotalMinutes, bram.TotalMinutes, 0.5);
    }

    [Fact]
    public void A_point_that_takes_no_time_to_speak_of_takes_a_minute()
    {
        var learnt = LearntTimes.From(Book, Doings("Ines Tallow", 64, 0.12));
        Assert.Equal(TimeSpan.FromMinutes(1), new PlanTimes(learnt, "Ines Tallow").Hands(Drain));
    }

    [Fact]
    public void A_point_that_the_learnt_book_does_not_have_keeps_its_own_time()
    {
        var learnt = LearntTimes.From(Book, Doings("Ines Tallow", 16, 3));
        var other = Drain with { Id = "not-in-the-book" };
        Assert.Equal(
            (other.Hands, other.Waits),
            (new PlanTimes(learnt, null).Hands(other), new PlanTimes(learnt, null).Waits(other))
        );
    }

    // four waits of 20 min: by the formula of docs/times.md exp((2·ln 10 + 2·ln 20)/4) = √(10·20) = 14.14 min
    [Fact]
    public void An_order_is_as_long_as_what_was_learnt()
    {
        OrderQuestion asked = new(Book, [Drain]);
        var waits = Enumerable.Repeat(new ObservedTime(Drain.Id, null, TimeSpan.FromMinutes(20)), 4);
        var learnt = LearntTimes.From(Book, waits);
        var (before, after) = (
            PlannedOrder.Of(asked).Certain,
            PlannedOrder.Of(asked with { Times = new(learnt, null) }).Certain
        );
        Assert.Equal(TimeSpan.FromMinutes(10), Drain.Waits);
        Assert.Equal(14, new PlanTimes(learnt, null).Waits(Drain).TotalMinutes);
        Assert.Equal(4 * 60, (after.Plan.Makespan - before.Plan.Makespan).Seconds, 1e-6);
        var wait = after.Waits.First(w => w.What == Drain.Title);
        Assert.Equal(14 * 60, (wait.End - wait.Start).Seconds, 1e-6);
    }

    private static IEnumerable<ObservedTime> Doings(string by, int count, double timesTheBook) =>
        Enumerable.Repeat(new ObservedTime(Drain.Id, by, Drain.Hands * timesTheBook), count);
}
