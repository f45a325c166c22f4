namespace Witnessmark.Handbook.BenchOrder;

/// <summary>The shortest order, proven: the most promising way first (A*), ways that another beats dropped.</summary>
internal sealed class ExactSearch(Workload work, Outlook outlook, int mostLabels)
{
    /// <summary>Orders that differ by less than a microsecond are equally long.</summary>
    public const double Tolerance = 1e-6;

    private readonly PriorityQueue<Label, (double Bound, double Left, int Number)> open = new();
    private readonly Frontier frontier = new();

    /// <summary>How many ways were looked at.</summary>
    public int Labels { get; private set; }

    /// <summary>The best way known, now as good as any, or the best found before the labels ran out.</summary>
    /// <param name="best">A complete way to beat.</param>
    /// <param name="lowerBound">No order is shorter than this.</param>
    public Label Improve(Label best, out double lowerBound)
    {
        Consider(Label.Begin(work), BeamSearch.End(best));
        while (open.TryDequeue(out var label, out _))
        {
            if (label.Dominated)
                continue;
            lowerBound = Math.Min(label.Bound, BeamSearch.End(best));
            if (label.Bound > BeamSearch.End(best) - Tolerance)
                return best;
            if (Labels >= mostLabels)
                return best;
            foreach (var next in Moves.From(label, work))
            {
                if (!Complete(next))
                    Consider(next, BeamSearch.End(best));
                else if (BeamSearch.End(next) < BeamSearch.End(best))
                    best = next;
            }
        }
        lowerBound = BeamSearch.End(best);
        return best;
    }

    private bool Complete(Label label) => label.Done == work.All && work.Rules.Final.MetBy(label.State);

    private void Consider(Label label, double toBeat)
    {
        Labels++;
        if (frontier.Beats(label))
            return;
        label.Bound = Math.Max(outlook.Bound(label), label.Parent?.Bound ?? 0);
        if (label.Bound <= toBeat - Tolerance && frontier.Admit(label))
            open.Enqueue(label, (label.Bound, -label.Time, Labels));
    }
}
