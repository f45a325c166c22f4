namespace Witnessmark.Ledger;

/// <summary>Wakes whoever waits for the next time that something comes in.</summary>
public sealed class Pulse
{
    private TaskCompletionSource next = New();

    /// <summary>Ends at the next beat. Taken before looking at what is there, so that nothing is missed in between.</summary>
    public Task Next => Volatile.Read(ref next).Task;

    internal void Beat() => Interlocked.Exchange(ref next, New()).SetResult();

    private static TaskCompletionSource New() => new(TaskCreationOptions.RunContinuationsAsynchronously);
}
