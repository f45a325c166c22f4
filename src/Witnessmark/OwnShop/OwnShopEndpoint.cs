using Witnessmark.Bench.OwnShop;
using Witnessmark.Bench.Toml;
using Witnessmark.Serve;

namespace Witnessmark.OwnShop;

/// <summary>A shop of one's own in place of the demo.</summary>
/// <param name="Ledger">The ledger that the asking device knows: asked twice, it happens once.</param>
/// <param name="Shop">The shop.</param>
public sealed record OwnShopAsked(string? Ledger, NewShop? Shop);

/// <summary>Sets the shop of one's own up, where the demo is.</summary>
public static class OwnShopEndpoint
{
    private const int MostTools = 200;
    private const int LongestText = 400;

    /// <summary><c>POST /api/own-shop</c>: when it answers, it is settled; then the server begins anew with the new shop, at the same address.</summary>
    public static IResult Post(
        OwnShopAsked asked,
        ServedShop served,
        DataFolder data,
        TimeProvider clock,
        HttpContext context,
        IHostApplicationLifetime program
    )
    {
        if (!DemoShop.Is(data))
            return Failure.Said(409, $"This is no demo: it is set up already, and nothing of it is taken away.");
        if (asked.Ledger != served.Ledger.Id)
            return Failure.Said(409, $"Another ledger is served here now. Load the page again.");
        if (asked.Shop is not { } shop || Lacks(shop))
            return Failure.Said(400, $"shop: one of its texts or lists is missing.");
        if (TooMuch(shop) is { } much)
            return Failure.Said(400, much);
        string[] taken = [served.Bench.Workshop.Id, .. served.PutAway];
        var (files, mistakes) = NewShopFiles.Of(shop, served.Files, taken);
        if (files is null)
            return Failure.Said(400, Sentence.List(mistakes.Select(WrittenMistake.At), "\n"));
        SourceText names = new(PutAwayShops.FileName, string.Join('\n', taken.Distinct()) + "\n");
        if (DemoPutAway.Begin(data.Path, [.. files, names], clock.GetUtcNow()) is not { } into)
            return Failure.Said(409, $"It has begun already.");
        context.Response.OnCompleted(() =>
        {
            program.StopApplication();
            return Task.CompletedTask;
        });
        return Results.Json(new { PutAway = into });
    }

    // a request may leave out what the records cannot be without
    private static bool Lacks(NewShop shop) =>
        Lacks([shop.Name, shop.Lead, shop.Paper, shop.Language])
        || shop.People is null
        || Lacks(shop.People)
        || shop.Instruments is null
        || shop.Instruments.Any(i => i is null || Lacks([i.Id, i.Name, i.Kind, i.Unit, i.Resolution, i.Error]))
        || (shop.Machine is { } m && (Lacks([m.Name, m.Drive]) || m.Facts is null || Lacks(m.Facts.Values)));

    private static bool Lacks(IEnumerable<string?> texts) => texts.Any(t => t is null);

    private static Sentence? TooMuch(NewShop shop) =>
        shop.Instruments.Count > MostTools || shop.People.Count > MostTools
            ? (Sentence)$"More than {MostTools} tools or people are too many at once."
        : shop.People.Append(shop.Name).Any(t => t.Length > LongestText)
            ? (Sentence)$"A name has more than {LongestText} characters."
        : null;
}
