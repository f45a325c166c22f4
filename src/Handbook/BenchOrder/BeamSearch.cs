namespace Witnessmark.Handbook.BenchOrder;

/// <summary>A good order quickly: task by task, keeping only the most promising ways.</summary>
internal sealed class BeamSearch(Workload work, Outlook outlook, int mostLabels)
{
    // A start for the exact search need not be as good as an answer that stands alone.
    private readonly int widest = work.Count > BenchOrder.ExactUpTo ? 64 : 8;

    private readonly int mostInLayer = mostLabels / Math.Max(1, work.Count);
    private int inLayer;
    private int done;
    private List<Label> beam = [Label.Begin(work)];

    // Each kept way may grow into one for every task in each of as many layers as there are tasks.
    private int Width => Math.Clamp(mostLabels / (work.Count * work.Count), 1, widest);

    /// <summary>Adds one task to every way that is kept; false when all have all tasks.</summary>
    public bool Grow()
    {
        if (done == work.Count)
            return false;
        done++;
        inLayer = 0;
        var next = new Frontier();
        foreach (var label in beam)
            for (var task = 0; task < work.Count; task++)
                Extend(label, task, next);
        beam = next.Kept().OrderBy(l => l.Bound).ThenBy(l => l.Time).Take(Width).ToList();
        return true;
    }

    /// <summary>The best complete way, once nothing grows any more; there always is one.</summary>
    public Label Best() => beam.Select(l => Moves.Towards(l, work.Rules.Final, work)!).MinBy(End)!;

    /// <summary>When all is over in a complete way.</summary>
    public static double End(Label label) => Math.Max(label.Time, label.Horizon);

    private void Extend(Label label, int task, Frontier next)
    {
        if (label.Done.Has(task) || !label.Done.Contains(work.Before[task]))
            return;
        if (Moves.Towards(label, work.Need[task], work) is not { } there)
            return;
        Keep(there.AfterTask(task, work), next);
        if (there.Time < there.Ready(task) && inLayer < mostInLayer)
            MeanwhileFor(there, task, next);
    }

    // While a wait runs, hands can already prepare for another task, or for the end, as far as this one allows.
    private void MeanwhileFor(Label label, int task, Frontier next)
    {
        var tried = new HashSet<uint> { label.State };
        for (var other = 0; other <= work.Count; other++)
        {
            if (other == task || (other < work.Count && label.Done.Has(other)))
                continue;
            var wanted = other == work.Count ? work.Rules.Final : work.Need[other];
            var both = work.Need[task].And(wanted);
            if (!both.Contradicts && Moves.Towards(label, both, work) is { } ready && tried.Add(ready.State))
                Keep(ready.AfterTask(task, work), next);
        }
    }

    private void Keep(Label label, Frontier next)
    {
        inLayer++;
        label.Bound = outlook.Bound(label);
        next.Admit(label);
    }
}
