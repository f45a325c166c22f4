using System.Globalization;
using Witnessmark.Bench.Jobs;
using Witnessmark.Paper.Findings;
using Witnessmark.Paper.Handover;
using Witnessmark.Paper.Labels;
using Witnessmark.Paper.LogBook;
using Witnessmark.Paper.Pdf;
using Witnessmark.Paper.Record;
using Witnessmark.Papers;
using Witnessmark.Photographs;

namespace Witnessmark.Serve;

/// <summary>A job on paper, from what the shop's ledger holds of it now.</summary>
public static class PaperEndpoints
{
    private const string PdfType = "application/pdf";

    /// <summary><c>GET /api/jobs/{job}/handover.pdf?paper=letter&amp;language=de&amp;units=us</c></summary>
    public static IResult HandoverSheetOf(
        string job,
        ServedShop shop,
        [AsParameters] PaperReader reader,
        string? paper = null
    )
    {
        if (reader.Refused(shop, out var tongue) is { } no)
            return no;
        if (StateOf(job, shop) is not { } state)
            return Unknown(job);
        if (PaperSize.Named(paper ?? shop.Bench.Workshop.Paper) is not { } size)
            return Failure.Said(400, $"There is no paper \"{paper}\" here: A4 and Letter are.");
        var before = Before(state, shop);
        var sheet = HandoverSheet.Pdf(
            state,
            shop.Bench,
            Today(),
            size,
            shop.Seal,
            Earlier(state, before, shop),
            hash => Small(hash, shop),
            before,
            tongue
        );
        return Results.File(sheet, PdfType);
    }

    /// <summary><c>GET /api/jobs/{job}/label.pdf?kind=service&amp;size=A8&amp;at=1</c></summary>
    public static IResult LabelOf(
        string job,
        ServedShop shop,
        [AsParameters] PaperReader reader,
        string? kind = null,
        string? size = null,
        string? at = null
    )
    {
        if (reader.Refused(shop, out var tongue) is { } no)
            return no;
        if (StateOf(job, shop) is not { } state)
            return Unknown(job);
        if (LabelCommand.KindOf(kind ?? "") is not { } which)
            return Failure.Said(400, $"There is no label of the kind \"{kind}\": service and key are.");
        if (LabelSize.Named(size ?? shop.Bench.Workshop.Label) is not { } label)
            return Failure.Said(400, $"There is no label of the size \"{size}\": {LabelSize.Names} are.");
        if (!int.TryParse(at ?? "1", NumberStyles.None, CultureInfo.InvariantCulture, out var place))
            return Failure.Said(400, $"\"{at}\" is no place on a sheet of labels: a whole number from 1 is.");
        var made = LabelSheet.Pdf(
            which,
            label,
            state,
            shop.Bench,
            Today(),
            shop.Seal,
            Before(state, shop),
            place,
            tongue
        );
        return made.Refusal is { } refusal ? Failure.Said(409, refusal.Because) : Results.File(made.Certain, PdfType);
    }

    /// <summary><c>GET /api/jobs/{job}/record.html</c>: for the owner, one page that needs nothing else.</summary>
    public static IResult RecordOf(
        string job,
        ServedShop shop,
        [AsParameters] PaperReader reader,
        HttpResponse response
    )
    {
        if (reader.Refused(shop, out var tongue) is { } no)
            return no;
        if (StateOf(job, shop) is not { } state)
            return Unknown(job);
        response.Headers.ContentSecurityPolicy = $"{RecordPage.Policy}; frame-ancestors 'none'";
        var page = RecordPage.Html(
            state,
            shop.Bench,
            Today(),
            shop.Seal,
            hash => Small(hash, shop),
            Before(state, shop),
            tongue
        );
        return Results.Text(page, "text/html", System.Text.Encoding.UTF8);
    }

    /// <summary><c>GET /api/jobs/{job}/estimate.pdf?paper=letter</c></summary>
    public static IResult EstimateSheetOf(
        string job,
        ServedShop shop,
        [AsParameters] PaperReader reader,
        string? paper = null
    )
    {
        if (reader.Refused(shop, out var tongue) is { } no)
            return no;
        if (StateOf(job, shop) is not { } state)
            return Unknown(job);
        if (PaperSize.Named(paper ?? shop.Bench.Workshop.Paper) is not { } size)
            return Failure.Said(400, $"There is no paper \"{paper}\" here: A4 and Letter are.");
        return Results.File(
            EstimateSheet.Pdf(state, shop.Bench, Today(), size, hash => Small(hash, shop), tongue),
            PdfType
        );
    }

    /// <summary><c>GET /api/jobs/{job}/log-book.json</c></summary>
    public static IResult LogBookOf(string job, ServedShop shop) =>
        StateOf(job, shop) is { } state
            ? Results.Text(
                LogBookFile.Write(state, shop.Bench, shop.Seal, Earlier(state, Before(state, shop), shop)),
                "application/json"
            )
            : Unknown(job);

    /// <summary>What the machine brought along, and then its released jobs in this workshop before this one.</summary>
    private static EarlierVisits Earlier(JobState state, IReadOnlyList<JobState> before, ServedShop shop)
    {
        var here = before
            .Where(job => job.Release is not null && job.MayGo)
            .Select(job => LogBookFile.Visit(job, shop.Bench, shop.Seal));
        return shop.LogBooks.Of(state.Arrival!.Machine.Vin).And(EarlierVisits.None with { Visits = [.. here] });
    }

    /// <summary>The machine's jobs in this workshop before this one.</summary>
    private static List<JobState> Before(JobState state, ServedShop shop) =>
        [
            .. shop
                .Ledger.JobsOf(state.Arrival!.Machine.Id)
                .TakeWhile(job => job != state.Job)
                .Select(job => StateOf(job, shop))
                .OfType<JobState>(),
        ];

    private static JobState? StateOf(string job, ServedShop shop)
    {
        // what came in without the word that it counts by, although the door is closed, does not count on paper
        var state = JobFold.Of(job, shop.Ledger.OfJob(job), shop.Bench, shop.Door.NotCounting);
        return state.Arrival is null ? null : state;
    }

    private static byte[]? Small(string hash, ServedShop shop) =>
        shop.Place.Photograph(hash) is { } file ? SmallPicture.Of(file) : null;

    private static DateOnly Today() => DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().DateTime);

    private static IResult Unknown(string job) =>
        Failure.Said(
            404,
            $"The shop's ledger has no job \"{job}\" that was opened. Has the device saved it at the shop?"
        );
}
