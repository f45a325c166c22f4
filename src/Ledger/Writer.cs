using Microsoft.EntityFrameworkCore;

namespace Witnessmark.Ledger;

/// <summary>
/// The one writer's way to the disk: where the store allows it, its connection and the statements made ready on it are kept from batch to batch. After anything
/// that went wrong they are let go, and the next batch begins with new ones.
/// </summary>
/// <param name="context">A context for the writer.</param>
internal sealed class Writer(Func<LedgerContext> context) : IDisposable
{
    private readonly Lock one = new();
    private (LedgerContext Ledger, StraightStatements Statements)? kept;
    private bool closed;

    /// <summary>Writes in one transaction: when this returns all of it is kept, when it throws nothing is.</summary>
    public T Write<T>(Func<LedgerContext, StraightStatements, T> write)
    {
        lock (one)
        {
            DemandItsPlace();
            var staysOpen = false;
            try
            {
                var written = WriteThrough(write);
                staysOpen = kept!.Value.Ledger.StaysOpen;
                return written;
            }
            finally
            {
                if (!staysOpen)
                    LetGo();
            }
        }
    }

    /// <summary>Waits for what is being written; then nothing is open any more, and nothing is written.</summary>
    public void Dispose()
    {
        lock (one)
        {
            closed = true;
            LetGo();
        }
    }

    // one that was moved is not let go: whatever lies there now may lack what was acknowledged
    private void DemandItsPlace()
    {
        if (closed)
            throw new LedgerUnavailable("it is closed.");
        if (kept is { Ledger.WasMoved: true })
            throw new LedgerUnavailable(
                "its file was moved or replaced while it was open. Put it back, or start the server anew."
            );
    }

    private T WriteThrough<T>(Func<LedgerContext, StraightStatements, T> write)
    {
        var (ledger, statements) = kept ??= Opened(context());
        using var transaction = ledger.BeginWriting();
        var written = write(ledger, statements);
        ledger.Keep(transaction);
        return written;
    }

    private static (LedgerContext, StraightStatements) Opened(LedgerContext ledger)
    {
        ledger.Database.OpenConnection();
        return (ledger, new(ledger.Database.GetDbConnection()));
    }

    private void LetGo()
    {
        var (ledger, statements) = kept.GetValueOrDefault();
        kept = null;
        statements?.Dispose(); // before the connection, which else would stay half open
        ledger?.Dispose();
    }
}
