using Witnessmark.Bench.Stock;
using Witnessmark.Doors;
using Witnessmark.Languages;
using Witnessmark.Stock;

namespace Witnessmark.Serve;

/// <summary>The shelf.</summary>
public static class StockEndpoint
{
    private const int LongestText = 200;

    /// <summary><c>GET /api/stock?find=</c>: every item with what there is of it, and what has to be ordered.</summary>
    public static IResult Get(string? find, ServedShop shop, HttpRequest request) =>
        find?.Length > LongestText
            ? Failure.Of(400, $"find: {find.Length} characters; at most {LongestText} are allowed.")
            : Results.Json(
                StockAnswer.Of(
                    shop.Bench.Workshop.Stock,
                    shop.Place.StockIfThere()?.Shelf() ?? Shelf.Empty,
                    AskedTongue.Of(request),
                    find
                )
            );

    /// <summary><c>POST /api/stock/moves</c>: answers when the move is on disk; 409 when the shelf refuses it.</summary>
    internal static IResult Post(MoveAsked asked, ServedShop shop, HttpContext context)
    {
        if (context.Who() is { } who && who.Person != asked.By)
            return Failure.Said(403, $"by: \"{asked.By}\" is not who is signed in, \"{who.Person}\".");
        var (answer, wrong, refused) = asked.Take(
            shop.Bench.Workshop,
            shop.Place.Stock,
            TimeProvider.System.GetLocalNow(),
            AskedTongue.Of(context.Request)
        );
        return answer is not null ? Results.Json(answer)
            : wrong is not null ? Failure.Said(400, wrong)
            : Failure.Said(409, refused!);
    }
}
