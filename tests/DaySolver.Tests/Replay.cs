using Witnessmark.Bench.Day;

namespace Witnessmark.DaySolver.Tests;

/// <summary>
/// Works a plan minute by minute and looks whether it can be worked: it shares no line with the rules or the solver, and
/// measures the plan anew.
/// </summary>
public static class Replay
{
    /// <summary>What is wrong with the plan, and what it measures.</summary>
    public static (IReadOnlyList<string> Wrong, int Lateness, int BenchTime) Of(DayQuestion question, DayPlan plan)
    {
        List<string> wrong = [];
        var hands = new Dictionary<(string, int), string>();
        var lifts = new Dictionary<(string, int), string>();
        var (lateness, bench) = (0, 0);
        foreach (var job in question.Jobs)
        {
            var at = plan.Jobs.Single(p => p.Job == job.Id);
            var technician = question.Technicians.Single(t => t.Name == at.Technician);
            foreach (var skill in job.Skills)
                if (technician.Skills is { } skills && !skills.Contains(skill) && job.Held is not { Begun: true })
                    wrong.Add($"{job.Id}: {at.Technician} has no {skill}");
            var clock = int.MinValue;
            for (var i = 0; i < job.Steps.Count; i++)
            {
                if (at.Starts[i] < clock)
                    wrong.Add($"{job.Id}: step {i} too early");
                var fast = i == 0 && job.Held is { Start: { } start } && start == at.Starts[0];
                if (!fast && (at.Starts[i] < question.Now || at.Starts[i] < (job.Parts ?? 0)))
                    wrong.Add($"{job.Id}: before now or its parts");
                for (var m = at.Starts[i]; m < at.Starts[i] + job.Steps[i].Hands; m++)
                {
                    if (!hands.TryAdd((at.Technician, m), job.Id))
                        wrong.Add($"{job.Id}: {at.Technician} is at {hands[(at.Technician, m)]}");
                    if (!technician.Hours.Any(h => h.From <= m && m < h.To) && !(fast && job.Held!.Begun))
                        wrong.Add($"{job.Id}: {at.Technician} is not there");
                }
                clock = at.Starts[i] + job.Steps[i].Hands + job.Steps[i].Waits;
            }
            var from = job.Held is { Begun: true, Lift: not null }
                ? Math.Min(question.Now, at.Starts[0])
                : at.Starts[0];
            for (var m = from; m < clock; m++)
            {
                if (!lifts.TryAdd((at.Lift, m), job.Id))
                    wrong.Add($"{job.Id}: on {at.Lift} stands {lifts[(at.Lift, m)]}");
                bench += question.Open.Any(o => o.From <= m && m < o.To) ? 1 : 0;
            }
            if (job.Held is { } held)
            {
                if (held.Technician != at.Technician || (held.Start is { } begun && begun != at.Starts[0]))
                    wrong.Add($"{job.Id}: moved");
                if (held is { Begun: true, Lift: { } lift } && lift != at.Lift)
                    wrong.Add($"{job.Id}: off its lift");
            }
            lateness += job.Promised is { } promised ? Math.Max(0, clock - promised) : 0;
        }
        return (wrong, lateness, bench);
    }
}
