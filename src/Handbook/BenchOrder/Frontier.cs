namespace Witnessmark.Handbook.BenchOrder;

/// <summary>For each set of done tasks and state of the machine, the ways to have come there that none of the others beats.</summary>
internal sealed class Frontier
{
    private readonly Dictionary<(TaskSet Done, uint State), List<Label>> best = [];

    /// <summary>All that were kept.</summary>
    public IEnumerable<Label> Kept() => best.Values.SelectMany(labels => labels);

    /// <summary>Whether a kept label is at least as good in everything.</summary>
    public bool Beats(Label label) =>
        best.TryGetValue((label.Done, label.State), out var rivals) && AnyDominates(rivals, label);

    /// <summary>Keeps the label and drops what it beats; false when it is itself beaten.</summary>
    public bool Admit(Label label)
    {
        var key = (label.Done, label.State);
        if (!best.TryGetValue(key, out var rivals))
            best.Add(key, rivals = []);
        if (AnyDominates(rivals, label))
            return false;
        rivals.RemoveAll(rival => rival.Dominated = label.Dominates(rival));
        rivals.Add(label);
        return true;
    }

    private static bool AnyDominates(List<Label> rivals, Label label)
    {
        foreach (var rival in rivals)
            if (rival.Dominates(label))
                return true;
        return false;
    }
}
