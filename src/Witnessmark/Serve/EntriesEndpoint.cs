using System.Globalization;
using System.Text.Json;
using Witnessmark.Bench.Record;
using Witnessmark.Doors;
using Witnessmark.Ledger;

namespace Witnessmark.Serve;

/// <summary>Entries come in and go out.</summary>
public static class EntriesEndpoint
{
    /// <summary><c>GET /api/entries?after=N</c></summary>
    public static IResult Get(string? after, ShopLedger ledger, Door door)
    {
        if (!long.TryParse(after ?? "0", NumberStyles.None, CultureInfo.InvariantCulture, out var order))
            return Failure.Of(400, $"after={after}: a whole number from 0 is allowed.");
        var page = ledger.After(order);
        return Results.Json(
            new
            {
                page.Ledger,
                page.Head,
                Entries = page.Entries.Select(e => new { e.Order, Entry = EntryJson.Write(e.Entry) }),
                NotCounting = NotCounting(page, door),
            }
        );
    }

    /// <summary>Those of a page that count for nothing: whether one does is known before it is taken in.</summary>
    private static string[] NotCounting(LedgerPage page, Door door)
    {
        if (page.Entries.Count == 0)
            return []; // most who ask are told nothing new
        var flagged = door.NotCounting;
        return [.. page.Entries.Select(e => e.Entry.Id).Where(flagged.Contains)];
    }

    /// <summary><c>POST /api/entries</c>: answers only when everything is on disk.</summary>
    public static async Task<IResult> Post(
        HttpRequest request,
        ServedShop shop,
        ShopLedger ledger,
        Door door,
        CancellationToken gone
    )
    {
        if (!request.HasJsonContentType())
            return Failure.Of(415, "Entries come as application/json.");
        try
        {
            using var json = await JsonDocument.ParseAsync(request.Body, cancellationToken: gone);
            var (batch, why) = BatchJson.Read(json.RootElement, Api.Protocols);
            return batch is null
                ? why!
                : Strangers(batch, request)
                    ?? Results.Json(await Taken(batch with { PutAway = shop.PutAway }, request, ledger, door));
        }
        catch (JsonException reason)
        {
            return Failure.Of(400, $"The request is no JSON: {reason.Message}");
        }
    }

    /// <summary>With a closed door a device brings its own entries and no others': its key is what says that they are its own.</summary>
    private static IResult? Strangers(Batch batch, HttpRequest request) =>
        request.HttpContext.Who() is { } who && who.Device != batch.Device
            ? Failure.Of(
                403,
                $"These are entries of the device \"{batch.Device}\"; \"{who.Device}\" cannot bring them."
            )
            : null;

    private static async Task<Receipt> Taken(Batch batch, HttpRequest request, ShopLedger ledger, Door door)
    {
        if (request.HttpContext.Who() is not { } who)
            return await ledger.AcceptAsync(batch);
        BroughtEntries.Flag(batch.Entries, who, door, ledger);
        var receipt = await ledger.AcceptAsync(batch);
        BroughtEntries.Note(batch.Entries, who, door);
        return receipt;
    }
}
