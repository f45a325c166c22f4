namespace Witnessmark.Bench.Day;

/// <summary>Who works at which machine on which lift, and when.</summary>
/// <param name="Jobs">The jobs that have a place.</param>
public sealed record DayPlan(IReadOnlyList<PlacedJob> Jobs)
{
    /// <summary>Where a job is, or null.</summary>
    public PlacedJob? Of(string job) => Jobs.FirstOrDefault(p => p.Job == job);

    /// <summary>The plan with one job elsewhere.</summary>
    public DayPlan With(PlacedJob placed) => new([.. Jobs.Where(p => p.Job != placed.Job), placed]);
}

/// <summary>A job in the plan.</summary>
/// <param name="Job">Its number.</param>
/// <param name="Technician">Who does it from beginning to end.</param>
/// <param name="Lift">Where it stands from beginning to end.</param>
/// <param name="Starts">When each of its steps begins.</param>
public sealed record PlacedJob(string Job, string Technician, string Lift, IReadOnlyList<int> Starts)
{
    /// <summary>When hands are on it, step by step.</summary>
    public IEnumerable<Span> Hands(DayJob job) => Starts.Zip(job.Steps, (at, step) => new Span(at, at + step.Hands));

    /// <summary>When it is ready.</summary>
    public int Ready(DayJob job) => Starts[^1] + job.Steps[^1].Hands + job.Steps[^1].Waits;

    /// <summary>When it stands on its lift; one that is known to stand there now has it from now on.</summary>
    public Span Stands(DayJob job, int now) =>
        new(job.Held is { Begun: true, Lift: not null } ? Math.Min(now, Starts[0]) : Starts[0], Ready(job));

    /// <summary>By how many minutes it is late; 0 when it is not, or not promised.</summary>
    public int Late(DayJob job) => job.Promised is { } promised ? Math.Max(0, Ready(job) - promised) : 0;
}

/// <summary>What a plan is measured by; less is better, the first before the second.</summary>
/// <param name="Lateness">Minutes by which promises are missed, all together.</param>
/// <param name="BenchTime">Opening minutes in which machines stand on lifts, all together.</param>
/// <param name="Idle">Those of them in which neither hands nor a wait are on the machine.</param>
public sealed record DayMeasure(int Lateness, int BenchTime, int Idle)
{
    /// <summary>Measures a plan.</summary>
    public static DayMeasure Of(DayQuestion question, DayPlan plan)
    {
        var (late, bench, idle) = (0, 0, 0);
        foreach (var job in question.Jobs)
        {
            if (plan.Of(job.Id) is not { } placed)
                continue;
            var stands = placed.Stands(job, question.Now);
            late += placed.Late(job);
            bench += Spans.Within(question.Open, stands);
            idle += Spans.Without(Spans.Common(question.Open, [stands]), Busy(job, placed)).Sum(s => s.Length);
        }
        return new(late, bench, idle);
    }

    private static IEnumerable<Span> Busy(DayJob job, PlacedJob placed) =>
        placed.Starts.Zip(job.Steps, (at, step) => new Span(at, at + step.Hands + step.Waits));
}
