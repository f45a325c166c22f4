namespace Witnessmark.Handbook.BenchOrder;

/// <summary>The shortest order, proven: the most promising way first (A*), ways that another beats dropped.</summary>
internal sealed class ExactSearch
{
    /// <summary>Orders that differ by less than a microsecond are equally long.</summary>
    public const double Tolerance = 1e-6;

    private readonly Workload work;
    private readonly Outlook outlook;
    private readonly int mostLabels;
    private readonly PriorityQueue<Label, (double Bound, double Left, int Number)> open = new();
    private readonly Frontier frontier = new();

    /// <summary>Begins with a complete way to beat.</summary>
    public ExactSearch(Workload work, Outlook outlook, int mostLabels, Label toBeat)
    {
        (this.work, this.outlook, this.mostLabels, Best) = (work, outlook, mostLabels, toBeat);
        Consider(Label.Begin(work), BeamSearch.End(toBeat));
    }

    /// <summary>How many ways were looked at.</summary>
    public int Labels { get; private set; }

    /// <summary>The best way known; once the search is over as good as any, or the best found before the labels ran out.</summary>
    public Label Best { get; private set; }

    /// <summary>No order is shorter than this, once the search is over.</summary>
    public double LowerBound { get; private set; }

    /// <summary>Looks at some more ways; false when the search is over.</summary>
    public bool Improve(int labels)
    {
        for (var until = Labels + labels; Labels < until; )
        {
            if (!open.TryDequeue(out var label, out _))
            {
                LowerBound = BeamSearch.End(Best);
                return false;
            }
            if (label.Dominated)
                continue;
            LowerBound = Math.Min(label.Bound, BeamSearch.End(Best));
            if (label.Bound > BeamSearch.End(Best) - Tolerance || Labels >= mostLabels)
                return false;
            Expand(label);
        }
        return true;
    }

    private void Expand(Label label)
    {
        foreach (var next in Moves.From(label, work))
            if (!Complete(next))
                Consider(next, BeamSearch.End(Best));
            else if (BeamSearch.End(next) < BeamSearch.End(Best))
                Best = next;
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
