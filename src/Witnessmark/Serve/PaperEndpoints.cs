using Witnessmark.Bench.Jobs;
using Witnessmark.Paper.Handover;
using Witnessmark.Paper.LogBook;
using Witnessmark.Photographs;

namespace Witnessmark.Serve;

/// <summary>A job on paper, from what the shop's ledger holds of it now.</summary>
public static class PaperEndpoints
{
    /// <summary><c>GET /api/jobs/{job}/handover.pdf</c></summary>
    public static IResult HandoverSheetOf(string job, ServedShop shop, DataFolder data) =>
        StateOf(job, shop) is { } state
            ? Results.File(
                HandoverSheet.Pdf(state, shop.Bench, Today(), hash => PhotographFolder.Find(data, hash)),
                "application/pdf"
            )
            : Unknown(job);

    /// <summary><c>GET /api/jobs/{job}/log-book.json</c></summary>
    public static IResult LogBookOf(string job, ServedShop shop) =>
        StateOf(job, shop) is { } state
            ? Results.Text(LogBookFile.Write(state, shop.Bench), "application/json")
            : Unknown(job);

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
