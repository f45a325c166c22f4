using System.Numerics;

namespace Witnessmark.Handbook.BenchOrder;

/// <summary>What can be done next, and how to get the machine into a state that is wanted.</summary>
internal static class Moves
{
    /// <summary>Every task that may be done and every single change that something still asks for.</summary>
    public static IEnumerable<Label> From(Label label, Workload work)
    {
        for (var i = 0; i < work.Count; i++)
            if (label.MayDo(i, work))
                yield return label.AfterTask(i, work);
        for (var s = 0; s < work.Rules.Count; s++)
            if (Asked(label, s, work) && work.Rules.MayChange(s, label.State))
                yield return label.AfterChange(s, work.Rules);
    }

    /// <summary>Makes the changes that a need asks for: those that need no cooling first, so that it cools meanwhile.</summary>
    /// <returns>Null when a change that can never be undone would come too early.</returns>
    public static Label? Towards(Label label, StateNeed need, Workload work)
    {
        var rules = work.Rules;
        for (var changes = need.Changes(label.State); changes != 0; changes = need.Changes(label.State))
        {
            var next = -1;
            for (var rest = changes; rest != 0; rest &= rest - 1)
            {
                var s = BitOperations.TrailingZeroCount(rest);
                if (!rules.MayChange(s, label.State))
                    continue;
                if (next < 0 || EarliestChange(label, s) < EarliestChange(label, next))
                    next = s;
            }
            if (next < 0 || TooEarly(label, next, work))
                return null;
            label = label.AfterChange(next, rules);
        }
        return label;
    }

    // Only what a remaining task or the end asks for can help: any other change would only be undone again.
    private static bool Asked(Label label, int s, Workload work)
    {
        var on = (label.State >> s & 1) != 0;
        var (off, users) = work.Users[s];
        var (toOther, toSame) = on ? (off, users) : (users, off);
        if (TooEarly(label, s, work))
            return false;
        if (!label.Done.Contains(toOther))
            return true;
        var ending = on ? work.Rules.Final.Off : work.Rules.Final.On;
        return (ending >> s & 1) != 0 && label.Done.Contains(toSame);
    }

    private static bool TooEarly(Label label, int s, Workload work) =>
        (work.Rules.OneWay >> s & 1) != 0 && !label.Done.Contains(work.Users[s].Off);

    private static double EarliestChange(Label label, int s) =>
        (label.State >> s & 1) != 0 ? Math.Max(label.Time, label.Cool(s)) : label.Time;
}
