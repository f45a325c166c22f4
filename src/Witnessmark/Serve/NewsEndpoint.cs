using System.Globalization;
using System.Runtime.CompilerServices;
using Witnessmark.Doors;
using Witnessmark.Ledger;

namespace Witnessmark.Serve;

/// <summary>Tells devices that something came in, so that they need not ask.</summary>
public static class NewsEndpoint
{
    // often enough that nothing between takes the line for dead, and that who was signed out does not listen on
    private static readonly TimeSpan Quiet = TimeSpan.FromSeconds(15);

    /// <summary><c>GET /api/news</c>: server-sent events, each the last order that there is; one at once and one in a while.</summary>
    public static IResult Get(
        ShopLedger ledger,
        Door door,
        HttpContext context,
        IHostApplicationLifetime program,
        CancellationToken gone
    ) => Results.ServerSentEvents(Heads(ledger, () => IsStillIn(door, context), program.ApplicationStopping, gone));

    private static bool IsStillIn(Door door, HttpContext context) =>
        context.Who() is null
            ? !door.IsClosed
            : DoorCookie.Of(context.Request) is { } token && door.Who(token, deed: false) is not null;

    private static async IAsyncEnumerable<string> Heads(
        ShopLedger ledger,
        Func<bool> isStillIn,
        CancellationToken stopping,
        [EnumeratorCancellation] CancellationToken gone
    )
    {
        using var end = CancellationTokenSource.CreateLinkedTokenSource(gone, stopping);
        do
        {
            var next = ledger.CameIn.Next;
            yield return ledger.Head().ToString(CultureInfo.InvariantCulture);
            await Task.WhenAny(next, Task.Delay(Quiet, end.Token));
        } while (!end.IsCancellationRequested && isStillIn());
    }
}
