using Witnessmark.Bench.Judging;

namespace Witnessmark.Bench.Planning;

/// <summary>What the machine's condition asks for: verdicts of this visit, and verdicts and findings of the last that looked.</summary>
internal static class ConditionReasons
{
    public static IEnumerable<(string Point, Reason Reason)> Of(PlanQuestion asked)
    {
        foreach (var point in asked.Today?.Points ?? [])
            if (Verdict(point, $"now") is { } reason)
                yield return (point.Point, reason);
        foreach (var (day, point) in Last(asked))
        {
            if (asked.Today?.Points.Any(p => p.Point == point.Point && p.Shown is not null) == true)
                continue; // what was read today speaks for itself
            foreach (var reason in Findings(point, $"at the last visit, {Sentence.Day(DayForm.Figures, day)}"))
                yield return (point.Point, reason);
        }
    }

    /// <summary>Each point as the last visit knew it that did anything about it.</summary>
    private static IEnumerable<(DateOnly Day, VisitedPoint Point)> Last(PlanQuestion asked) =>
        asked
            .Visits.Where(v => v.Day <= asked.Day)
            .OrderBy(v => v.Day)
            .SelectMany(v => v.Points.Where(Says), (v, p) => (v.Day, Point: p))
            .GroupBy(p => p.Point.Point)
            .Select(g => g.Last());

    private static bool Says(VisitedPoint point) =>
        point is { Shown: not null } or { Left: not null } or { Dropped: not null } or { Notes.Count: > 0 };

    private static IEnumerable<Reason> Findings(VisitedPoint point, Sentence when)
    {
        if (Verdict(point, when) is { } verdict)
            yield return verdict;
        if (point.Left is { } left)
            yield return new(Because.Finding, $"Left as it was {when}: {Closed(left)}");
        if (point.Dropped is { } dropped)
            yield return new(Because.Finding, $"Dropped {when}: {Closed(dropped)}");
        foreach (var note in point.Notes)
            yield return new(Because.Finding, $"Noted {when}: {Closed(note)}");
    }

    private static Reason? Verdict(VisitedPoint point, Sentence when) =>
        point.Verdict switch
        {
            VerdictWord.Outside => new(Because.Outside, $"Outside {when}{Shown(point)}."),
            VerdictWord.Unproven => new(Because.Unproven, $"Unproven {when}{Shown(point)}."),
            VerdictWord.Close => new(Because.Close, $"Close to its limit {when}{Shown(point)}."),
            _ => null,
        };

    private static Sentence Shown(VisitedPoint point) =>
        point.Measured is null ? Sentence.Empty : (Sentence)$": {point.Shown}";

    private static Sentence Closed(string words) => words.EndsWith('.') ? Sentence.Of(words) : (Sentence)$"{words}.";
}
