namespace Witnessmark.Bench.Day;

/// <summary>What a day plan has to answer: who works at which machine on which lift, and when. Times are minutes from <paramref name="Origin"/>.</summary>
/// <param name="Origin">Midnight of the first day, by the shop's clock.</param>
/// <param name="Now">When the plan begins.</param>
/// <param name="Open">Opening hours from that day on, in order.</param>
/// <param name="Technicians">Who works.</param>
/// <param name="Lifts">Places at which one machine at a time is worked on; all alike.</param>
/// <param name="Jobs">The jobs that are open.</param>
public sealed record DayQuestion(
    DateTime Origin,
    int Now,
    IReadOnlyList<Span> Open,
    IReadOnlyList<DayTechnician> Technicians,
    IReadOnlyList<string> Lifts,
    IReadOnlyList<DayJob> Jobs
)
{
    /// <summary>The moment on the shop's clock.</summary>
    public DateTime At(int minute) => Origin.AddMinutes(minute);

    /// <summary>Minutes from the origin, seconds left out.</summary>
    public int Minute(DateTime moment) => (int)Math.Floor((moment - Origin).TotalMinutes);

    /// <summary>A moment for people, short when it is today.</summary>
    public Sentence Say(int minute) => ShopTime.Say(At(minute), At(Now));

    /// <summary>Those who can do a job; once somebody has begun, nobody else.</summary>
    public IEnumerable<DayTechnician> WhoCan(DayJob job) =>
        Technicians.Where(t => job.Held is { Begun: true } held ? t.Name == held.Technician : t.Can(job));
}

/// <summary>Somebody who works.</summary>
/// <param name="Name">As in the shop's list of people.</param>
/// <param name="Skills">What they can do; null: everything.</param>
/// <param name="Hours">When they are there, within the opening hours, in order.</param>
public sealed record DayTechnician(string Name, IReadOnlyList<string>? Skills, IReadOnlyList<Span> Hours)
{
    /// <summary>Whether they have every skill that the job asks for.</summary>
    public bool Can(DayJob job) => Skills is null || job.Skills.All(Skills.Contains);
}

/// <summary>A job with the work that is left of it.</summary>
/// <param name="Id">Its number.</param>
/// <param name="Title">The machine, as people call it.</param>
/// <param name="Steps">In their order, at least one.</param>
/// <param name="Promised">When it has to be ready, or null.</param>
/// <param name="Parts">When the last of its parts arrives, or null.</param>
/// <param name="Skills">What whoever does it must be able to do.</param>
/// <param name="Held">What is not for the plan to decide, or null.</param>
public sealed record DayJob(
    string Id,
    string Title,
    IReadOnlyList<DayStep> Steps,
    int? Promised = null,
    int? Parts = null,
    IReadOnlyList<string>? Skills = null,
    Held? Held = null
)
{
    /// <summary>What whoever does it must be able to do; empty when anybody can.</summary>
    public IReadOnlyList<string> Skills { get; init; } = Skills ?? [];

    /// <summary>Hands-on minutes.</summary>
    public int Hands => Steps.Sum(s => s.Hands);

    /// <summary>Unattended minutes.</summary>
    public int Waits => Steps.Sum(s => s.Waits);
}

/// <summary>A stretch of work without a break, and what then drains, cures or cools by itself; the machine keeps its lift meanwhile.</summary>
/// <param name="What">In few words.</param>
/// <param name="Hands">Hands-on minutes, 1 to 1440.</param>
/// <param name="Waits">Unattended minutes afterwards, 0 to 10080.</param>
public sealed record DayStep(Sentence What, int Hands, int Waits);

/// <summary>What stands already: begun, or placed by hand.</summary>
/// <param name="Technician">Who does it.</param>
/// <param name="Start">When its first step begins, or began; null leaves that to the plan.</param>
/// <param name="Lift">The lift on which it stands now, or null when it may have been pushed aside.</param>
/// <param name="Begun">It has been begun: technician and lift stay.</param>
public sealed record Held(string Technician, int? Start, string? Lift = null, bool Begun = false);
