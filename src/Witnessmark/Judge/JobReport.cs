using Witnessmark.Bench.Corrections;
using Witnessmark.Bench.Jobs;
using Witnessmark.Estimates;

namespace Witnessmark.Judge;

/// <summary>A job on the terminal: the strip, then what was done in its order with verdicts and corrections, then the holds.</summary>
internal static class JobReport
{
    /// <param name="to">Where it is written.</param>
    /// <param name="steps">The job's state after each of its entries.</param>
    public static void Write(TextWriter to, IReadOnlyList<JobState> steps)
    {
        var state = steps[^1];
        Head(to, state);
        for (var i = 1; i < steps.Count; i++)
            Step(to, steps[i - 1], steps[i]);
        End(to, state);
    }

    private static void Head(TextWriter to, JobState state)
    {
        if (state.Arrival is { } arrival)
            to.WriteLine($"{arrival.Machine.Name}, {arrival.Machine.Vin} · job {state.Job} · {arrival.Purpose}");
        to.WriteLine($"[{string.Concat(state.Points.Select(p => Sign(p.Stripe)))}]");
        to.WriteLine("/ marked  ! outside  ? unproven  : not marked  x read again  - left  . not read");
    }

    private static void Step(TextWriter to, JobState before, JobState after)
    {
        Changes(to, before, after);
        if (after.Photographs.Count > before.Photographs.Count)
            to.WriteLine($"  photograph: {after.Photographs[^1].Shows}");
        foreach (var (was, now) in Pairs(before, after))
            if (now.Readings.Count > was.Readings.Count)
                Reading(to, was, now);
            else if (now.Corrections.Count > was.Corrections.Count)
                to.WriteLine($"  done: {now.Point.Title}: {now.Corrections[^1].Words}");
            else if (now.Given is { } given && given.Point == now.Point.Id && was.Given?.Entry.Id != given.Entry.Id)
                to.WriteLine($"  figure for this job: {now.Point.Title}: {given.Figure.InSheet}");
            else if (now.Vouched is { } vouched && was.Vouched is null)
                to.WriteLine($"  vouched for: {now.Point.Title}: {vouched.Name} for {now.Figure!.InSheet}");
            else if (now.Second is { Second: { } second, Agreement: { } agreement } && was.Second?.Second is null)
                to.WriteLine(
                    $"  second check: {now.Point.Title}: {second.Entry.By} read {string.Join(", ", second.Raw)}: {agreement.Words}"
                );
            else if (now.Marked is not null && was.Marked is null)
                to.WriteLine($"  / marked: {now.Point.Title}");
            else if (now.Left is { } left && was.Left is null)
                to.WriteLine($"  - left as it is: {now.Point.Title}: {left.Why}");
            else if (now.Notes.Count > was.Notes.Count)
                to.WriteLine($"  note: {now.Point.Title}: {now.Notes[^1].Text}");
        foreach (var (was, now) in Pairs(before, after))
            if (now.AgainBecause.Count > 0 && was.AgainBecause.Count == 0)
                to.WriteLine($"  x read again: {now.Point.Title}. {string.Join(" ", now.AgainBecause)}");
    }

    /// <summary>Points that were in the plan before and after; what came or went is told by itself.</summary>
    private static IEnumerable<(PointState, PointState)> Pairs(JobState before, JobState after) =>
        before.Points.Join(after.Points, p => p.Point.Id, p => p.Point.Id, (was, now) => (was, now));

    private static void Changes(TextWriter to, JobState before, JobState after)
    {
        foreach (var point in after.Points.ExceptBy(before.Points.Select(p => p.Point.Id), p => p.Point.Id))
            to.WriteLine($"  + in the plan: {point.Point.Title}: {point.Why}");
        foreach (var dropped in after.Dropped.ExceptBy(before.Dropped.Select(d => d.Point.Id), d => d.Point.Id))
            to.WriteLine(
                $"  - dropped from the plan: {dropped.Point.Title}: {dropped.Why}{(dropped.Lead is { } lead ? $" ({lead} stands for it)" : "")}"
            );
    }

    private static void Reading(TextWriter to, PointState before, PointState point)
    {
        var reading = point.Readings[^1];
        to.WriteLine();
        to.WriteLine($"{point.Point.Title}{(point.Figure is { } figure ? $"   {figure.Short}" : "")}");
        // what was asked before anything was read here: a dose, a wrench setting
        if (before is { Current: null, Advice: { } asked })
            Advice(to, asked);
        var with = reading.Instrument is { } instrument ? $" with {instrument.Name}" : "";
        if (reading.Raw.Count > 0)
            to.WriteLine($"  read {string.Join(", ", reading.Raw)}{with}");
        to.WriteLine($"  {Sign(point.Stripe)} {reading.Opinion.Headline}. {reading.Opinion.Grounds}".TrimEnd());
        foreach (var line in reading.Opinion.Working)
            to.WriteLine($"      {line}");
        if (point.Advice is { } advice)
            Advice(to, advice);
    }

    private static void Advice(TextWriter to, Advice advice)
    {
        to.WriteLine($"  -> {(advice.Aim is { } aim ? aim + ": " : "")}{advice.Headline}");
        foreach (var line in (advice.Refusal is { } refusal ? [refusal] : Array.Empty<Sentence>()).Concat(advice.Notes))
            to.WriteLine($"     {line}");
        foreach (var line in advice.Working)
            to.WriteLine($"      {line}");
    }

    private static void End(TextWriter to, JobState state)
    {
        to.WriteLine();
        if (state.Findings.Count > 0)
        {
            to.WriteLine($"Findings ({state.Findings.Count}):");
            FindingReport.Write(to, state);
            to.WriteLine();
        }
        foreach (var (entry, why) in state.NotUnderstood)
            to.WriteLine($"Not understood, kept: entry {entry.Seq} ({entry.Kind}): {why}");
        if (state.Holds.Count == 0)
        {
            to.WriteLine(
                state.Release is { } release
                    ? $"Released by {release.Names}. The machine may go."
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
