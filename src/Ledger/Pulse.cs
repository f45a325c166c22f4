namespace Witnessmark.Ledger;

/// <summary>Wakes whoever waits for the next time that something comes in.</summary>
public sealed class Pulse
{
    private TaskCompletionSource next = New();
    private long head;

    /// <summary>Ends at the next beat. Taken before looking at what is there, so that nothing is missed in between.</summary>
    public Task Next => Volatile.Read(ref next).Task;

    /// <summary>The last order that there was at the last beat; 0 before the first.</summary>
    public long Head => Volatile.Read(ref head);

    internal void Beat(long now)
    {
        Volatile.Write(ref head, now);
        Interlocked.Exchange(ref next, New()).SetResult();
    }

    private static TaskCompletionSource New() => new(TaskCreationOptions.RunContinuationsAsynchronously);
}
