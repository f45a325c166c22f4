using Google.OrTools.Sat;
using Witnessmark.Bench.Day;

namespace Witnessmark.DaySolver;

/// <summary>
/// The question as constraints over whole minutes. Technicians: no two of their steps meet, nor a step and their time away. Lifts
/// are alike, so only their number counts here; which machine stands on which follows afterwards, because intervals of which never
/// more than n meet can always be laid on n lines.
/// </summary>
internal sealed class DayModel
{
    private readonly DayQuestion question;
    private readonly int end;
    private readonly List<Span> closed;
    private readonly Dictionary<string, List<IntervalVar>> hands;
    private readonly List<IntervalVar> stands = [];
    private readonly List<JobVars> jobs = [];

    /// <param name="question">Only jobs that have a place, and holds that can be kept.</param>
    /// <param name="end">No plan goes beyond this minute.</param>
    public DayModel(DayQuestion question, int end)
    {
        (this.question, this.end) = (question, end);
        closed = Between(question.Open);
        hands = question.Technicians.ToDictionary(t => t.Name, _ => new List<IntervalVar>());
        foreach (var job in question.Jobs)
            jobs.Add(Add(job));
        foreach (var technician in question.Technicians)
        {
            foreach (var away in Away(technician))
                hands[technician.Name].Add(Model.NewFixedSizeIntervalVar(away.From, away.Length, "away"));
            Model.AddNoOverlap(hands[technician.Name]);
        }
        var lifts = Model.AddCumulative(question.Lifts.Count);
        foreach (var stand in stands)
            lifts.AddDemand(stand, 1);
        Lateness = LinearExpr.Sum(jobs.Where(j => j.Late is not null).Select(j => j.Late!));
        BenchTime = LinearExpr.Sum(jobs.Select(j => j.BenchTime));
        Ends = LinearExpr.Sum(jobs.Select(j => j.End));
    }

    public CpModel Model { get; } = new();

    /// <summary>Minutes by which promises are missed.</summary>
    public LinearExpr Lateness { get; }

    /// <summary>Opening minutes in which machines stand on lifts.</summary>
    public LinearExpr BenchTime { get; }

    /// <summary>When the jobs are ready, added up.</summary>
    public LinearExpr Ends { get; }

    /// <summary>Begins the search at a plan.</summary>
    public void Hint(DayPlan plan)
    {
        Model.ClearHints();
        foreach (var job in jobs)
        {
            if (plan.Of(job.Job.Id) is not { } at)
                continue;
            foreach (var (start, minute) in job.Starts.Zip(at.Starts))
                if (start is IntVar variable)
                    Model.AddHint(variable, minute);
            foreach (var (name, by) in job.By)
                Model.AddHint(by, name == at.Technician);
        }
    }

    /// <summary>The plan of a solution, lifts still empty.</summary>
    public DayPlan Read(CpSolver solver) =>
        new([
            .. jobs.Select(j => new PlacedJob(
                j.Job.Id,
                j.By.First(b => solver.BooleanValue(b.By)).Name,
                "",
                [.. j.Starts.Select(s => (int)solver.Value(s))]
            )),
        ]);

    private JobVars Add(DayJob job)
    {
        var by = question.WhoCan(job).Select(t => (t.Name, By: Model.NewBoolVar($"{job.Id} {t.Name}"))).ToList();
        Model.AddExactlyOne(by.Select(b => b.By));
        if (job.Held is { } held)
            Model.Add(by.First(b => b.Name == held.Technician).By == 1);
        var starts = job.Steps.Select((step, i) => Start(job, step, i)).ToList();
        for (var i = 0; i < starts.Count; i++)
        {
            if (i > 0)
                Model.Add(starts[i] >= starts[i - 1] + job.Steps[i - 1].Hands + job.Steps[i - 1].Waits);
            foreach (var (name, mine) in by)
                hands[name]
                    .Add(
                        Model.NewOptionalFixedSizeIntervalVar(
                            starts[i],
                            job.Steps[i].Hands,
                            mine,
                            $"{job.Id} {i} {name}"
                        )
                    );
        }
        var ready = Model.NewIntVar(0, end, $"{job.Id} ready");
        Model.Add(ready == starts[^1] + job.Steps[^1].Hands + job.Steps[^1].Waits);
        var onLift = job.Held is { Begun: true, Lift: not null } begun
            ? LinearExpr.Constant(Math.Min(question.Now, begun.Start ?? question.Now))
            : starts[0];
        var length = Model.NewIntVar(0, 2 * end, $"{job.Id} stands");
        stands.Add(Model.NewIntervalVar(onLift, length, ready, job.Id));
        return new(job, by, starts, ready, Late(job, ready), Stands(job, onLift, ready));
    }

    /// <summary>A step begins where the whole of it lies within opening hours.</summary>
    private LinearExpr Start(DayJob job, DayStep step, int i)
    {
        if (i == 0 && job.Held?.Start is { } fixedAt)
            return LinearExpr.Constant(fixedAt);
        var earliest = FirstPlan.Earliest(question, job);
        var domain = question
            .Open.Select(o => (long[])[Math.Max(o.From, earliest), Math.Min(o.To, end) - step.Hands])
            .Where(o => o[0] <= o[1])
            .ToArray();
        return Model.NewIntVarFromDomain(Google.OrTools.Util.Domain.FromIntervals(domain), $"{job.Id} {i}");
    }

    /// <summary>Hands-on minutes that surely lie within opening hours: what was begun may have been begun before them.</summary>
    public static int HandsOpen(DayJob job) =>
        job.Held is { Begun: true, Start: not null } ? job.Hands - job.Steps[0].Hands : job.Hands;

    private IntVar? Late(DayJob job, IntVar ready)
    {
        if (job.Promised is not { } promised)
            return null;
        var late = Model.NewIntVar(0, Math.Max(0, end - promised), $"{job.Id} late");
        Model.Add(late >= ready - promised);
        return late;
    }

    /// <summary>From lift to ready without the closed hours between: of each closed stretch as much may be taken off as lies between them.</summary>
    private LinearExpr Stands(DayJob job, LinearExpr onLift, IntVar ready)
    {
        var off = new List<IntVar>();
        foreach (var gap in closed.Where(c => c.From < end && c.To > question.Now))
        {
            var over = Model.NewBoolVar($"{job.Id} over {gap.From}");
            var taken = Model.NewIntVar(0, gap.Length, $"{job.Id} off {gap.From}");
            Model.Add(taken <= gap.Length * over);
            Model.Add(onLift <= gap.From).OnlyEnforceIf(over);
            Model.Add(taken <= ready - gap.From).OnlyEnforceIf(over);
            off.Add(taken);
        }
        var stands = ready - onLift - LinearExpr.Sum(off);
        Model.Add(stands >= HandsOpen(job)); // true anyway; said, it lifts the bound
        return stands;
    }

    /// <summary>When a technician is not there, but for what they began before.</summary>
    private List<Span> Away(DayTechnician technician)
    {
        var held = question
            .Jobs.Where(j => j.Held is { Start: not null } h && h.Technician == technician.Name)
            .Select(j => new Span(j.Held!.Start!.Value, j.Held.Start.Value + j.Steps[0].Hands));
        return [.. Spans.Without(Between(technician.Hours), held).Where(a => a.From < end)];
    }

    private List<Span> Between(IReadOnlyList<Span> spans)
    {
        var last = question.Open.Count > 0 ? question.Open[^1].To : 0;
        return [.. Spans.Without([new(Math.Min(0, question.Now), Math.Max(last, end))], spans)];
    }

    private sealed record JobVars(
        DayJob Job,
        IReadOnlyList<(string Name, BoolVar By)> By,
        IReadOnlyList<LinearExpr> Starts,
        IntVar End,
        IntVar? Late,
        LinearExpr BenchTime
    );
}
