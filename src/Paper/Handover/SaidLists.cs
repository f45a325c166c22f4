using Witnessmark.Bench.Jobs;
using Witnessmark.Paper.Pdf;

namespace Witnessmark.Paper.Handover;

/// <summary>What people said: points left as they are or dropped from the plan with the reason, and notes.</summary>
internal static class SaidLists
{
    public static void Write(Pages pages, JobState state)
    {
        foreach (var (heading, lines) in Of(state))
            LineList.Write(pages, heading, lines.Select(l => (l, false)));
    }

    /// <summary>The lists with their headings; some may be empty.</summary>
    public static IEnumerable<(Sentence Heading, IReadOnlyList<Sentence> Lines)> Of(JobState state)
    {
        var left = state
            .Points.Where(p => p.Left is not null)
            .Select(p => (Sentence)$"{p.Point.Title}: {p.Left!.Value.Why} ({p.Left.Value.Entry.By})");
        yield return ($"Left as it is, and why", [.. left]);
        var dropped = state
            .Dropped.Where(d => d.Point.Safety)
            .Select(d => (Sentence)$"{d.Point.Title}: {d.Why} ({d.Entry.By}; {d.Lead} stands for it)");
        yield return ($"Dropped from the plan though safety hangs on it, and why", [.. dropped]);
        var notes = state
            .Points.SelectMany(p => p.Notes.Select(n => (Sentence)$"{p.Point.Title}: {n.Text} ({n.Entry.By})"))
            .Concat(state.Notes.Select(n => (Sentence)$"{n.Text} ({n.Entry.By})"));
        yield return ($"Notes", [.. notes]);
    }
}
