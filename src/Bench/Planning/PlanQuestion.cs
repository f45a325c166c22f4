using Witnessmark.Bench.Campaigns;
using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Machines;

namespace Witnessmark.Bench.Planning;

/// <summary>What a plan is asked for.</summary>
/// <param name="Purpose">A purpose of the book.</param>
/// <param name="Sheet">The machine's sheet.</param>
/// <param name="Machine">The machine.</param>
/// <param name="Day">The day of the visit.</param>
public sealed record PlanQuestion(string Purpose, FigureSheet Sheet, Machine Machine, DateOnly Day)
{
    /// <summary>What the odometer shows today; null when it was not read yet.</summary>
    public double? Kilometres { get; init; }

    /// <summary>Visits before this one, in any order.</summary>
    public IReadOnlyList<PastVisit> Visits { get; init; } = [];

    /// <summary>Visits of like machines, for what the fleet knows of wear.</summary>
    public IReadOnlyList<PastVisit> Fleet { get; init; } = [];

    /// <summary>What was read in this visit so far; null before it began.</summary>
    public PastVisit? Today { get; init; }

    /// <summary>Campaigns that are open; null when none were looked up.</summary>
    public IReadOnlyList<FoundCampaign>? Campaigns { get; init; }

    /// <summary>When the shop asks on.</summary>
    public PlanSettings Settings { get; init; } = PlanSettings.Usual;
}

/// <summary>From when on a plan asks for a point; a shop sets its own under <c>[planning]</c>.</summary>
/// <param name="WearProbability">A forecast asks for its point from this probability on that the limit is reached before the next visit.</param>
/// <param name="NextKilometres">How far the machine goes until its next visit, at most.</param>
/// <param name="NextMonths">After how many months it comes again, at the latest.</param>
/// <remarks>The usual ones are common practice, no source.</remarks>
public sealed record PlanSettings(double WearProbability, double NextKilometres, int NextMonths)
{
    /// <summary>When a shop says nothing.</summary>
    public static readonly PlanSettings Usual = new(0.1, 6000, 12);
}
