namespace Witnessmark.Handbook.BenchOrder;

/// <summary>One pair of hands, jobs with heads and tails that may be interrupted: when is all over at best?</summary>
internal sealed class OneMachine(int most)
{
    private readonly double[] head = new double[most];
    private readonly double[] left = new double[most];
    private readonly double[] tail = new double[most];
    private int count;

    public void Clear() => count = 0;

    /// <summary>A job with the earliest begin, its length and what must pass after it.</summary>
    public void Add(double begin, double length, double after)
    {
        if (length <= 0 && after <= 0 && begin <= 0)
            return;
        // Kept by head, so that the sweep meets them in turn.
        var at = count++;
        for (; at > 0 && head[at - 1] > begin; at--)
        {
            head[at] = head[at - 1];
            left[at] = left[at - 1];
            tail[at] = tail[at - 1];
        }
        head[at] = begin;
        left[at] = length;
        tail[at] = after;
    }

    /// <summary>Always the longest tail first among what can begin; empties the jobs.</summary>
    public double Makespan(double from)
    {
        var now = from;
        var over = from;
        for (var arrived = 0; ; )
        {
            while (arrived < count && head[arrived] <= now)
                arrived++;
            var longest = -1;
            for (var i = 0; i < arrived; i++)
                if (left[i] >= 0 && (longest < 0 || tail[i] > tail[longest]))
                    longest = i;
            if (longest < 0)
            {
                if (arrived == count)
                    return over;
                now = head[arrived];
                continue;
            }
            var end = now + left[longest];
            if (arrived < count && head[arrived] < end)
            {
                left[longest] = end - head[arrived];
                now = head[arrived];
                continue;
            }
            now = end;
            left[longest] = -1;
            over = Math.Max(over, now + tail[longest]);
        }
    }
}
