using System.Data.Common;
using Npgsql;

namespace Witnessmark.Ledger.PostgreSql;

/// <summary>Tells the other servers of a shop that something came in, and hears it of them. A hint and no promise: who missed one looks by itself soon after.</summary>
/// <remarks>
/// It is told after the commit and in a transaction of its own that waits for no disk: PostgreSQL lets one transaction with a NOTIFY commit at a time
/// in the whole cluster, so within the commit of entries every shop would wait for every other's standby.
/// </remarks>
internal sealed class News(NpgsqlDataSource source, ShopName shop) : IDisposable
{
    private static readonly TimeSpan LooksItself = TimeSpan.FromSeconds(10);
    private static readonly TimeSpan TriesAgain = TimeSpan.FromSeconds(1);
    private readonly CancellationTokenSource end = new();

    /// <summary>Something came in here.</summary>
    public void Tell()
    {
        try
        {
            using var connection = source.OpenConnection();
            connection.Run($"BEGIN; SET LOCAL synchronous_commit = off; NOTIFY {shop.Schema}; COMMIT");
        }
        catch (Exception lost) when (lost is DbException or LedgerUnavailable)
        {
            // what came in is kept and acknowledged: the others look by themselves
        }
    }

    /// <summary>Lets a ledger beat whenever something came in elsewhere, until it is disposed.</summary>
    public void Hear(ShopLedger ledger) => _ = Task.Run(() => Hear(ledger, end.Token));

    public void Dispose()
    {
        end.Cancel();
        end.Dispose();
    }

    private async Task Hear(ShopLedger ledger, CancellationToken end)
    {
        while (!end.IsCancellationRequested)
            try
            {
                await Listen(ledger, end);
            }
            catch (Exception gone) when (gone is DbException or LedgerUnavailable or OperationCanceledException)
            {
                await Task.Delay(TriesAgain, end).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
            }
    }

    private async Task Listen(ShopLedger ledger, CancellationToken end)
    {
        await using var connection = await source.OpenConnectionAsync(end);
        connection.Run($"LISTEN {shop.Schema}");
        while (true)
        {
            ledger.HearOthers(); // at first too: what was told before it listened
            await connection.WaitAsync(LooksItself, end);
        }
    }
}
