using Witnessmark.Bench.Corrections;
using Witnessmark.Bench.Jobs;

namespace Witnessmark.Judge;

/// <summary>A job on the terminal: the strip, each reading with verdict and uncertainty, corrections with their working, holds.</summary>
internal static class JobReport
{
    public static void Write(TextWriter to, JobState state)
    {
        Head(to, state);
        foreach (var point in state.Points)
            Point(to, point);
        End(to, state);
    }

    private static void Head(TextWriter to, JobState state)
    {
        if (state.Arrival is { } arrival)
            to.WriteLine($"{arrival.Machine.Name}, {arrival.Machine.Vin} · job {state.Job} · {arrival.Purpose}");
        to.WriteLine($"[{string.Concat(state.Points.Select(p => Sign(p.Stripe)))}]");
        to.WriteLine("/ marked  ! outside  ? unproven  : not marked  x read again  - left  . not read");
    }

    private static void Point(TextWriter to, PointState point)
    {
        to.WriteLine();
        to.WriteLine(
            $"{Sign(point.Stripe)} {point.Point.Title}{(point.Figure is { } figure ? $"   {figure.Short}" : "")}"
        );
        foreach (var step in Steps(point))
            to.WriteLine("    " + step);
        if (point.Advice is { } advice && (advice.Needed || advice.Notes.Count > 0))
            Advice(to, advice);
        foreach (var why in point.AgainBecause)
            to.WriteLine($"    read again: {why}");
        if (point.Left is { } left)
            to.WriteLine($"    left as it is: {left.Why}");
        foreach (var note in point.Notes)
            to.WriteLine($"    note: {note.Text}");
    }

    /// <summary>Readings and corrections in the order they were made.</summary>
    private static IEnumerable<string> Steps(PointState point) =>
        point
            .Readings.Select(r => (r.Entry.Seq, Lines: Reading(r)))
            .Concat(point.Corrections.Select(c => (c.Entry.Seq, Lines: Enumerable.Repeat($"done: {c.Words}", 1))))
            .OrderBy(s => s.Seq)
            .SelectMany(s => s.Lines);

    private static IEnumerable<string> Reading(ReadingTaken reading)
    {
        var with = reading.Instrument is { } instrument ? $" with {instrument.Name}" : "";
        if (reading.Raw.Count > 0)
            yield return $"read {string.Join(", ", reading.Raw)}{with}";
        yield return $"{reading.Opinion.Verdict.ToString().ToLowerInvariant()}: {reading.Opinion.Headline}. {reading.Opinion.Grounds}".TrimEnd();
        foreach (var line in reading.Opinion.Working)
            yield return "    " + line;
    }

    private static void Advice(TextWriter to, Advice advice)
    {
        to.WriteLine($"    -> {(advice.Aim is { } aim ? aim + ": " : "")}{advice.Headline}");
        foreach (var line in (advice.Refusal is { } refusal ? [refusal] : Array.Empty<string>()).Concat(advice.Notes))
            to.WriteLine($"       {line}");
        foreach (var line in advice.Working)
            to.WriteLine($"           {line}");
    }

    private static void End(TextWriter to, JobState state)
    {
        to.WriteLine();
        foreach (var (entry, why) in state.NotUnderstood)
            to.WriteLine($"Not understood, kept: entry {entry.Seq} ({entry.Kind}): {why}");
        if (state.Holds.Count == 0)
        {
            to.WriteLine(
                state.Release is { } release
                    ? $"Released by {release.Name}. The machine may go."
                    : "Nothing holds it. It still wants its release."
            );
            return;
        }
        to.WriteLine($"Before it can go ({state.Holds.Count}):");
        foreach (var hold in state.Holds)
            to.WriteLine($"  {Sign(hold.Stripe)} {hold.Words}");
    }

    private static char Sign(Stripe stripe) =>
        stripe switch
        {
            Stripe.Marked or Stripe.MarkedClose => '/',
            Stripe.Inside or Stripe.Close => ':',
            Stripe.Outside => '!',
            Stripe.Unproven => '?',
            Stripe.Again => 'x',
            Stripe.Left => '-',
            _ => '.',
        };
}
