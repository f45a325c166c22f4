using System.Numerics;

namespace Witnessmark.Handbook.BenchOrder;

/// <summary>How early everything can be over at best, seen from a label.</summary>
/// <remarks>
/// The relaxation: every remaining task and every change of state that cannot be avoided is a job with a time before which it cannot
/// begin (head) and a time that must pass after it (tail); one pair of hands may interrupt jobs at will. Its optimum is
/// reached by always working on the begun-able job with the longest tail (J. R. Jackson, An extension of Johnson's results on job
/// lot scheduling, Naval Research Logistics Quarterly 3, 1956), and no real order can beat it.
/// </remarks>
internal sealed class Outlook
{
    private readonly Workload work;
    private readonly StateRules rules;
    private readonly Tails tails;
    private readonly double[] begin;
    private readonly OneMachine jobs;

    public Outlook(Workload work)
    {
        this.work = work;
        rules = work.Rules;
        tails = new Tails(work);
        begin = new double[work.Count];
        jobs = new OneMachine(work.Count + 3 * rules.Count);
    }

    public double Bound(Label label)
    {
        jobs.Clear();
        var left = work.All.Without(label.Done);
        Heads(label);
        for (var s = 0; s < rules.Count; s++)
            Switches(label, s, left);
        return Math.Max(label.Horizon, Math.Max(Cooled(label), jobs.Makespan(label.Time)));
    }

    private void Heads(Label label)
    {
        for (var i = 0; i < work.Count; i++)
        {
            if (label.Done.Has(i))
                continue;
            var head = Math.Max(label.Time, label.Ready(i));
            var changes = work.Need[i].Changes(label.State);
            if (changes != 0)
                head = Math.Max(head, Access(label, changes));
            foreach (var p in work.Predecessors[i])
                if (!label.Done.Has(p))
                    head = Math.Max(head, begin[p] + work.Hands[p] + tails.Lag[p, i]);
            begin[i] = head;
            jobs.Add(head, work.Hands[i], tails.After[i]);
        }
    }

    private double Access(Label label, uint changes)
    {
        var head = label.Time + rules.Hands(changes, label.State);
        for (var cooling = changes & label.State & rules.Timed; cooling != 0; cooling &= cooling - 1)
        {
            var s = BitOperations.TrailingZeroCount(cooling);
            head = Math.Max(head, Cleared(label, s));
        }
        return head;
    }

    private double Cleared(Label label, int s) => Math.Max(label.Time, label.Cool(s)) + rules.Clear[s];

    // What must end off and is on now must cool down, whatever else happens.
    private double Cooled(Label label)
    {
        var least = label.Time;
        for (var cooling = rules.Final.Off & label.State & rules.Timed; cooling != 0; cooling &= cooling - 1)
            least = Math.Max(least, Cleared(label, BitOperations.TrailingZeroCount(cooling)));
        return least;
    }

    private void Switches(Label label, int s, TaskSet left)
    {
        var on = (label.State >> s & 1) != 0;
        var all = tails.Ending(s, on);
        var other = on ? work.Users[s].Off : work.Users[s].On;
        var same = on ? work.Users[s].On : work.Users[s].Off;
        var (otherTail, otherEnd, sameEnd) = (double.PositiveInfinity, label.Time, label.Time);
        for (var i = 0; i < work.Count; i++)
        {
            if (!left.Has(i))
                continue;
            if (label.Done.Contains(work.Before[i]))
                all = Math.Max(all, tails.Switching[s, i, on ? 1 : 0]);
            if (other.Has(i))
            {
                otherTail = Math.Min(otherTail, work.Hands[i] + tails.After[i]);
                otherEnd = Math.Max(otherEnd, begin[i] + work.Hands[i]);
            }
            else if (same.Has(i))
            {
                sameEnd = Math.Max(sameEnd, begin[i] + work.Hands[i]);
            }
        }
        if (all == 0)
            return;
        var from = on ? Math.Max(label.Time, label.Cool(s)) : label.Time;
        if (double.IsPositiveInfinity(otherTail))
        {
            jobs.Add(Math.Max(from, sameEnd), all, 0);
            return;
        }
        var first = rules.Hands(s, label.State);
        jobs.Add(from, first, otherTail);
        // The last change back comes after everything that needs it the other way.
        var last = Math.Min(all - first, tails.Ending(s, !on));
        jobs.Add(otherEnd, last, 0);
        jobs.Add(label.Time, all - first - last, 0);
    }
}
