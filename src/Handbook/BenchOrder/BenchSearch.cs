using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.BenchOrder;

/// <summary>The search for an order, a piece at a time: first a beam, task by task, then, where the tasks are few, the proof.</summary>
public sealed class BenchSearch
{
    // ways looked at in one piece of the proof
    private const int Piece = 500;

    private readonly Workload work;
    private readonly Outlook outlook;
    private readonly int effort;
    private readonly BeamSearch beam;
    private ExactSearch? exact;
    private bool over;

    internal BenchSearch(Workload work, int effort)
    {
        (this.work, this.effort) = (work, effort);
        outlook = new Outlook(work);
        beam = new BeamSearch(work, outlook, Labels(work, effort));
    }

    /// <summary>Searches one piece more; false when it is over.</summary>
    public bool Advance()
    {
        if (over || beam.Grow())
            return !over;
        exact ??= work.Count > BenchOrder.ExactUpTo ? null : new ExactSearch(work, outlook, effort, beam.Best());
        over = exact?.Improve(Piece) != true;
        return !over;
    }

    /// <summary>The order that was found.</summary>
    /// <exception cref="InvalidOperationException">The search is not over.</exception>
    public BenchPlan Plan =>
        !over ? throw new InvalidOperationException("The search is not over.")
        : exact is null ? PlanOf(beam.Best(), outlook.Bound(Label.Begin(work)), false)
        : PlanOf(exact.Best, exact.LowerBound, exact.LowerBound > BeamSearch.End(exact.Best) - ExactSearch.Tolerance);

    // One look at a large order costs more: it grows with the square of the tasks.
    private static int Labels(Workload work, int effort)
    {
        var size = Math.Max(1.0, (double)work.Count / BenchOrder.ExactUpTo);
        return (int)(effort / (size * size));
    }

    private BenchPlan PlanOf(Label last, double lowerBound, bool proven) =>
        new(
            new Duration(BeamSearch.End(last)),
            new Duration(work.Hands.Sum()),
            Steps(last),
            proven,
            proven ? null : new Duration(lowerBound)
        );

    private BenchStep[] Steps(Label last)
    {
        var steps = new List<BenchStep>();
        for (var label = last; label.Parent is { } before; label = before)
            steps.Add(new BenchStep(Word(before, label.Move), new(label.Start), new(label.Time)));
        steps.Reverse();
        return [.. steps];
    }

    private string Word(Label before, int move) =>
        move >= 0 ? work.Tasks[move].Id
        : (before.State >> ~move & 1) != 0 ? "clear:" + work.Rules.Name(~move)
        : "set:" + work.Rules.Name(~move);
}
