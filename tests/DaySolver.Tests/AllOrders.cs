using Witnessmark.Bench.Day;

namespace Witnessmark.DaySolver.Tests;

/// <summary>
/// The least lateness by trying everything: every technician for every job, every order in which the steps of all jobs can begin,
/// each step as early as that order allows. Some order of a best plan is among them, and moving its steps to the left makes
/// no machine later.
/// </summary>
public static class AllOrders
{
    public static int LeastLateness(DayQuestion question)
    {
        var least = int.MaxValue;
        Choose(question, new int[question.Jobs.Count], 0, ref least);
        return least;
    }

    private static void Choose(DayQuestion question, int[] who, int job, ref int least)
    {
        if (job == who.Length)
        {
            Order(
                question,
                who,
                new int[who.Length],
                new int[who.Length],
                new int[question.Technicians.Count],
                [.. question.Lifts.Select(_ => 0)],
                new int[who.Length],
                0,
                ref least
            );
            return;
        }
        for (var t = 0; t < question.Technicians.Count; t++)
        {
            var technician = question.Technicians[t];
            if (technician.Skills is { } skills && question.Jobs[job].Skills.Any(s => !skills.Contains(s)))
                continue;
            who[job] = t;
            Choose(question, who, job + 1, ref least);
        }
    }

    // done: steps begun of each job; ready: when its last wait is over; free: each technician; lifts: until when each is taken
    private static void Order(
        DayQuestion question,
        int[] who,
        int[] done,
        int[] ready,
        int[] free,
        int[] lifts,
        int[] on,
        int late,
        ref int least
    )
    {
        if (late >= least)
            return;
        if (question.Jobs.Index().All(j => done[j.Index] == j.Item.Steps.Count))
        {
            least = late;
            return;
        }
        for (var j = 0; j < done.Length; j++)
        {
            var job = question.Jobs[j];
            if (done[j] == job.Steps.Count)
                continue;
            var step = job.Steps[done[j]];
            // a machine that is still worked on keeps its lift: its steps all come before the next one's first
            var lift = done[j] == 0 ? Array.IndexOf(lifts, lifts.Min()) : on[j];
            var from = Math.Max(question.Now, Math.Max(free[who[j]], job.Parts ?? 0));
            from = Math.Max(from, done[j] == 0 ? lifts[lift] : ready[j]);
            if (from >= Taken)
                continue;
            var begins = question
                .Technicians[who[j]]
                .Hours.Where(h => Math.Max(h.From, from) + step.Hands <= h.To)
                .Select(h => Math.Max(h.From, from))
                .First();
            var over = begins + step.Hands + step.Waits;
            var last = done[j] + 1 == job.Steps.Count;
            var was = (Ready: ready[j], Free: free[who[j]], Lift: lifts[lift], On: on[j]);
            (done[j], ready[j], free[who[j]], on[j]) = (done[j] + 1, over, begins + step.Hands, lift);
            lifts[lift] = last ? over : Taken;
            var more = last && job.Promised is { } promised ? Math.Max(0, over - promised) : 0;
            Order(question, who, done, ready, free, lifts, on, late + more, ref least);
            (done[j], ready[j], free[who[j]], on[j]) = (done[j] - 1, was.Ready, was.Free, was.On);
            lifts[lift] = was.Lift;
        }
    }

    private const int Taken = int.MaxValue / 2;
}
