using Witnessmark.Bench.Visits;

namespace Witnessmark.Serve;

/// <summary>How fast a point wears on other machines of the same figure sheet.</summary>
public static class FleetEndpoint
{
    /// <summary><c>GET /api/machines/{id}/points/{point}/fleet</c></summary>
    public static IResult Get(string id, string point, ServedShop shop)
    {
        var bench = shop.Bench;
        if (!bench.Book.Points.TryGetValue(point, out var asked))
            return Failure.Of(404, $"The bench book has no point \"{point}\".");
        if (SheetOf(id, shop) is not { } sheet)
            return Failure.Of(404, $"The shop's ledger has no visit of a machine \"{id}\".");
        Visit[] all = [.. shop.Ledger.OfJobsNaming(sheet).Select(e => Visit.Of(e[0].Job, e)).OfType<Visit>()];
        var vin = MachineVisits.Last(id, all, bench.Workshop)?.Vin;
        var others = MachineVisits.Others(id, vin, sheet, all, bench.Workshop);
        var (rate, machines) = FleetRate.Of(others.Select(visits => PointHistory.Of(asked, visits, bench)));
        return Results.Json(new FleetAnswer(sheet, machines, rate?.Mean, rate?.Deviation));
    }

    // of its last visit
    private static string? SheetOf(string id, ServedShop shop) =>
        shop
            .Ledger.JobsOf(id)
            .Reverse()
            .Select(job => Visit.Of(job, shop.Ledger.OfJob(job)))
            .OfType<Visit>()
            .FirstOrDefault()
            ?.Head.Sheet;
}

/// <summary>What like machines show.</summary>
/// <param name="Sheet">Id of their figure sheet.</param>
/// <param name="Machines">How many of them show a rate at this point.</param>
/// <param name="Rate">Mean, in mm per 1000 km, positive where the reading grows; null when they are fewer than three.</param>
/// <param name="Deviation">One standard deviation of one more machine's rate, or null.</param>
internal sealed record FleetAnswer(string Sheet, int Machines, double? Rate, double? Deviation);
