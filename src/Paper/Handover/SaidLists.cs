using Witnessmark.Bench.Jobs;
using Witnessmark.Paper.Pdf;

namespace Witnessmark.Paper.Handover;

/// <summary>What people said: points left as they are with the reason, and notes.</summary>
internal static class SaidLists
{
    public static void Write(Pages pages, JobState state)
    {
        var left = state
            .Points.Where(p => p.Left is not null)
            .Select(p => $"{p.Point.Title}: {p.Left!.Value.Why} ({p.Left.Value.Entry.By})");
        Write(pages, "Left as it is, and why", [.. left]);
        var notes = state
            .Points.SelectMany(p => p.Notes.Select(n => $"{p.Point.Title}: {n.Text} ({n.Entry.By})"))
            .Concat(state.Notes.Select(n => $"{n.Text} ({n.Entry.By})"));
        Write(pages, "Notes", [.. notes]);
    }

    private static void Write(Pages pages, string heading, IReadOnlyList<string> lines)
    {
        if (lines.Count == 0)
            return;
        pages.Begin(heading, 20);
        foreach (var line in lines)
            pages.Row([Cell.Of(0, Pages.Width, (line, Typeface.Body))], 1.5, false);
        pages.End();
    }
}
