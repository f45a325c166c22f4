using Witnessmark.Bench.Day;
using Witnessmark.Day;
using Witnessmark.DaySolver;

namespace Witnessmark.Serve;

/// <summary>The day plan of the open jobs. It is solved anew whenever something was written since, or ten minutes have passed.</summary>
public sealed class DayEndpoint(ServedShop shop, TimeProvider clock)
{
    private const int GoodForMinutes = 10;
    private readonly Lock solving = new();
    private readonly OpenJobs openJobs = new();
    private (long Head, DateTime At, string Text)? last;

    /// <summary><c>GET /api/day</c></summary>
    public IResult Get()
    {
        // one search at a time: it takes what cores there are
        lock (solving)
        {
            var head = shop.Ledger.After(long.MaxValue).Head;
            var now = clock.GetLocalNow().DateTime;
            if (last is { } known && known.Head == head && now >= known.At && now < known.At.AddMinutes(GoodForMinutes))
                return Results.Text(known.Text, "application/json");
            var (question, missing) = DayOfJobs.Of(shop.Bench, openJobs.In(shop.Ledger, shop.Bench), now);
            if (question is null)
                return Failure.Of(409, missing!);
            var (solved, why) = DaySolving.Solve(question, DaySearch.UsualSeconds);
            if (solved is null)
                return Failure.Of(503, why!);
            var text = DayJson.Of(question, solved).ToJsonString();
            last = (head, now, text);
            return Results.Text(text, "application/json");
        }
    }
}
