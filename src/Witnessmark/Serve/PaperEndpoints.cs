using Witnessmark.Bench.Jobs;
using Witnessmark.Paper.Findings;
using Witnessmark.Paper.Handover;
using Witnessmark.Paper.LogBook;
using Witnessmark.Paper.Pdf;
using Witnessmark.Photographs;

namespace Witnessmark.Serve;

/// <summary>A job on paper, from what the shop's ledger holds of it now.</summary>
public static class PaperEndpoints
{
    /// <summary><c>GET /api/jobs/{job}/handover.pdf?paper=letter</c></summary>
    public static IResult HandoverSheetOf(string job, ServedShop shop, DataFolder data, string? paper = null)
    {
        if (StateOf(job, shop) is not { } state)
            return Unknown(job);
        if (PaperSize.Named(paper ?? "A4") is not { } size)
            return Failure.Of(400, $"There is no paper \"{paper}\" here: A4 and Letter are.");
        var sheet = HandoverSheet.Pdf(
            state,
            shop.Bench,
            Today(),
            size,
            shop.Seal,
            Earlier(state, shop),
            hash => PhotographFolder.Find(data, hash)
        );
        return Results.File(sheet, "application/pdf");
    }

    /// <summary><c>GET /api/jobs/{job}/estimate.pdf?paper=letter</c></summary>
    public static IResult EstimateSheetOf(string job, ServedShop shop, DataFolder data, string? paper = null)
    {
        if (StateOf(job, shop) is not { } state)
            return Unknown(job);
        if (PaperSize.Named(paper ?? "A4") is not { } size)
            return Failure.Of(400, $"There is no paper \"{paper}\" here: A4 and Letter are.");
        var sheet = EstimateSheet.Pdf(state, shop.Bench, Today(), size, hash => PhotographFolder.Find(data, hash));
        return Results.File(sheet, "application/pdf");
    }

    /// <summary><c>GET /api/jobs/{job}/log-book.json</c></summary>
    public static IResult LogBookOf(string job, ServedShop shop) =>
        StateOf(job, shop) is { } state
            ? Results.Text(LogBookFile.Write(state, shop.Bench, shop.Seal, Earlier(state, shop)), "application/json")
            : Unknown(job);

    /// <summary>What the machine brought along, and then its released jobs in this workshop before this one.</summary>
    private static EarlierVisits Earlier(JobState state, ServedShop shop)
    {
        var machine = state.Arrival!.Machine;
        var here = shop
            .Ledger.JobsOf(machine.Id)
            .TakeWhile(job => job != state.Job)
            .Select(job => StateOf(job, shop))
            .OfType<JobState>()
            .Where(before => before.Release is not null && before.MayGo)
            .Select(before => LogBookFile.Visit(before, shop.Bench, shop.Seal));
        return shop.LogBooks.Of(machine.Vin).And(EarlierVisits.None with { Visits = [.. here] });
    }

    private static JobState? StateOf(string job, ServedShop shop)
    {
        var state = JobFold.Of(job, shop.Ledger.OfJob(job), shop.Bench);
        return state.Arrival is null ? null : state;
    }

    private static DateOnly Today() => DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().DateTime);

    private static IResult Unknown(string job) =>
        Failure.Of(
            404,
            $"The shop's ledger has no job \"{job}\" that was opened. Has the device saved it at the shop?"
        );
}
