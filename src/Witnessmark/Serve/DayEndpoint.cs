using Witnessmark.Bench.Day;
using Witnessmark.Bench.Jobs;
using Witnessmark.Day;
using Witnessmark.DaySolver;
using Witnessmark.Languages;
using Witnessmark.Times;

namespace Witnessmark.Serve;

/// <summary>
/// The day plan of the open jobs. It is solved anew whenever something was written since, or ten minutes have passed; what the shelf
/// lacks is looked up each time.
/// </summary>
public sealed class DayEndpoint(ServedShop shop, TimeProvider clock)
{
    private const int GoodForMinutes = 10;
    private readonly Lock solving = new();
    private readonly OpenJobs openJobs = new();
    private Solution? last;

    /// <summary><c>GET /api/day?language=de</c></summary>
    /// <param name="language">What is said in it is said in this language; English where nothing is asked for.</param>
    public IResult Get(string? language = null)
    {
        var tongue = ShopTongues.Named(language ?? "") ?? Tongue.English;
        // one search at a time: it takes what cores there are
        lock (solving)
        {
            var head = shop.Ledger.After(long.MaxValue).Head;
            var now = clock.GetLocalNow().DateTime;
            if (last is { } known && known.Head == head && now >= known.At && now < known.At.AddMinutes(GoodForMinutes))
                return Reply(known, tongue);
            var jobs = openJobs.In(shop.Ledger, shop.Bench, shop.Door.NotCounting);
            var learnt = TimesOnDisk.Learnt(shop.Ledger, shop.Bench.Book);
            var (question, missing) = DayOfJobs.Of(shop.Bench, jobs, now, learnt);
            if (question is null)
                return Failure.Said(409, missing!);
            var (solved, why) = DaySolving.Solve(question, DaySearch.UsualSeconds);
            if (solved is null)
                return Failure.Said(503, why!);
            last = new(head, now, jobs, question, solved);
            return Reply(last, tongue);
        }
    }

    private IResult Reply(Solution solution, Tongue tongue)
    {
        var shelf = shop.Place.StockIfThere()?.Shelf();
        var day = DateOnly.FromDateTime(solution.At);
        var notWhole = NotWhole.Of(shop.Bench, solution.Jobs, shelf, day);
        return Results.Text(
            DayJson.Of(solution.Question, solution.Solved, notWhole, tongue).ToJsonString(),
            "application/json"
        );
    }

    private sealed record Solution(
        long Head,
        DateTime At,
        IReadOnlyList<JobState> Jobs,
        DayQuestion Question,
        SolvedDay Solved
    );
}
