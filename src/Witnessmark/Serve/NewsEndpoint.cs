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

    // what comes within this is told once: in a busy shop a line to each device for each commit would be most of the work
    private static readonly TimeSpan Together = TimeSpan.FromMilliseconds(200);

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
            : DoorCookie.Session.Of(context.Request) is { } token && door.Who(token, deed: false) is not null;

    private static async IAsyncEnumerable<string> Heads(
        ShopLedger ledger,
        Func<bool> isStillIn,
        CancellationToken stopping,
        [EnumeratorCancellation] CancellationToken gone
    )
    {
        using var end = CancellationTokenSource.CreateLinkedTokenSource(gone, stopping);
        var next = ledger.CameIn.Next;
        var head = ledger.Head();
        do
        {
            yield return head.ToString(CultureInfo.InvariantCulture);
            (head, next) = await Later(ledger, head, next, end.Token);
        } while (!end.IsCancellationRequested && isStillIn());
    }

    /// <summary>How far it goes at the next beat, or what was known when there was none for a while; and the beat after it.</summary>
    private static async Task<(long Head, Task Next)> Later(
        ShopLedger ledger,
        long known,
        Task next,
        CancellationToken end
    )
    {
        try
        {
            await next.WaitAsync(Quiet, end);
            await Task.Delay(Together, end);
            var after = ledger.CameIn.Next;
            return (ledger.CameIn.Head, after);
        }
        catch (Exception nothing) when (nothing is TimeoutException or OperationCanceledException)
        {
            return (known, next);
        }
    }
}
