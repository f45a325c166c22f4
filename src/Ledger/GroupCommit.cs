using System.Threading.Channels;

namespace Witnessmark.Ledger;

/// <summary>
/// One writer for all: batches that wait are committed together in the order in which they came, so that each waits for one
/// write to the disk at most besides its own, and none is overtaken until it gives up.
/// </summary>
/// <typeparam name="T">A batch.</typeparam>
/// <param name="write">Writes all in one transaction; when it throws, nothing of them is kept.</param>
internal sealed class GroupCommit<T>(Func<IReadOnlyList<T>, IReadOnlyList<Receipt>> write)
{
    private const int MostTogether = 64;
    private readonly Channel<Waiting> waiting = Channel.CreateUnbounded<Waiting>(new() { SingleReader = true });
    private int started;

    /// <summary>Ends when the batch is on disk, or with why it is not.</summary>
    public Task<Receipt> Take(T batch)
    {
        var mine = new Waiting(batch, new(TaskCreationOptions.RunContinuationsAsynchronously));
        waiting.Writer.TryWrite(mine);
        if (Interlocked.Exchange(ref started, 1) == 0)
            _ = Task.Run(WriteAsTheyCome);
        return mine.Receipt.Task;
    }

    private async Task WriteAsTheyCome()
    {
        List<Waiting> together = [];
        while (await waiting.Reader.WaitToReadAsync())
        {
            while (together.Count < MostTogether && waiting.Reader.TryRead(out var next))
                together.Add(next);
            Write(together);
            together.Clear();
        }
    }

    private void Write(IReadOnlyList<Waiting> together)
    {
        try
        {
            var receipts = write([.. together.Select(w => w.Batch)]);
            for (var i = 0; i < together.Count; i++)
                together[i].Receipt.SetResult(receipts[i]);
        }
        catch (Exception broken) when (together.Count == 1)
        {
            together[0].Receipt.SetException(broken);
        }
        catch (Exception) // one that cannot be written must not take the others along
        {
            foreach (var one in together)
                Write([one]);
        }
    }

    private sealed record Waiting(T Batch, TaskCompletionSource<Receipt> Receipt);
}
