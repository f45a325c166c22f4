using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.BenchOrder;

/// <summary>One way the machine can be, yes (1) or no (0): on the stand, fairing off, engine warm.</summary>
/// <param name="Name">Its name, once in an order.</param>
/// <param name="Initial">Whether it is so at the start.</param>
/// <param name="Set">Hands-on time to make it so.</param>
public sealed record BenchState(string Name, bool Initial, Duration Set)
{
    /// <summary>How it must be at the end; null when that is free.</summary>
    public bool? Final { get; init; }

    /// <summary>Hands-on time to undo it; null when it takes no hands, or cannot be undone (no <see cref="ClearAfter"/> either).</summary>
    public Duration? Clear { get; init; }

    /// <summary>Unattended time before it can be undone, from the last task that needed it (cooling down); null when there is none.</summary>
    public Duration? ClearAfter { get; init; }

    /// <summary>How other states must be for as long as this one is so.</summary>
    public IReadOnlyDictionary<string, bool> Requires { get; init; } = new Dictionary<string, bool>();

    /// <summary>Whether it can be undone at all.</summary>
    public bool Clearable => Clear is not null || ClearAfter is not null;
}

/// <summary>One task at the bench.</summary>
/// <param name="Id">Its name, once in an order.</param>
/// <param name="Hands">Hands-on time.</param>
/// <param name="WaitAfter">Unattended time after it, before what follows may begin (cure, settle, soak).</param>
/// <param name="After">Tasks that must be done, and waited out, before it begins.</param>
/// <param name="Needs">How states must be while it is done.</param>
public sealed record BenchTask(
    string Id,
    Duration Hands,
    Duration WaitAfter,
    IReadOnlyList<string> After,
    IReadOnlyDictionary<string, bool> Needs
);

/// <summary>One line of the plan.</summary>
/// <param name="Do">A task's name, <c>set:</c> or <c>clear:</c> and a state's name.</param>
/// <param name="Start">When hands begin, from the start of the job.</param>
/// <param name="End">When hands are free again.</param>
public readonly record struct BenchStep(string Do, Duration Start, Duration End);

/// <summary>All tasks in an order, with their times.</summary>
/// <param name="Makespan">When all is done, waited out and back to how it must end.</param>
/// <param name="HandsOn">Hands-on time of the tasks alone.</param>
/// <param name="Schedule">What to do when, in order.</param>
/// <param name="Proven">Whether no order is shorter.</param>
/// <param name="LowerBound">When not proven: no order is shorter than this.</param>
public sealed record BenchPlan(
    Duration Makespan,
    Duration HandsOn,
    IReadOnlyList<BenchStep> Schedule,
    bool Proven,
    Duration? LowerBound
);
