using Witnessmark.Bench.Campaigns;

namespace Witnessmark.Bench.Jobs;

/// <summary>What a job says of the campaigns of its machine.</summary>
/// <param name="Settled">Each number once, as it was settled last.</param>
/// <param name="Left">Each number once, as it was decided last.</param>
internal sealed record CampaignFold(IReadOnlyList<CampaignSettled> Settled, IReadOnlyList<CampaignLeft> Left)
{
    public static CampaignFold Of(IReadOnlyList<Fact> live)
    {
        CampaignSettled[] settled =
        [
            .. Last(live.OfType<CampaignFact>(), f => f.Number)
                .Select(f => new CampaignSettled(f.Entry, f.Number, f.Outcome, f.Why)),
        ];
        var done = settled.Where(Lifts).Select(s => NameKey.Of(s.Number)).ToHashSet();
        return new(
            settled,
            [
                .. Last(live.OfType<CampaignLeftFact>().Where(f => IsReason(f.Why)), f => f.Number)
                    .Where(f => !done.Contains(NameKey.Of(f.Number))) // nothing is open that it could leave with
                    .Select(f => new CampaignLeft(f.Entry, f.Number, f.Why)),
            ]
        );
    }

    /// <summary>
    /// "Do not ride" campaigns that were found at arrival and hold the job: neither done, nor found by somebody, with a reason, not to
    /// concern the machine, nor left open by somebody with a reason.
    /// </summary>
    public IReadOnlyList<FoundCampaign> Holding(Opening opening)
    {
        if (!opening.KeepsMachine)
            return [];
        var lifted = Settled.Where(Lifts).Select(s => s.Number).Concat(Left.Select(l => l.Number));
        return OpenCampaigns.Of((opening.Arrival.Campaigns ?? []).Where(c => c.DoNotRide), lifted);
    }

    private static bool Lifts(CampaignSettled settled) =>
        settled.Outcome == CampaignOutcome.Done || IsReason(settled.Why);

    private static bool IsReason(string? why) => !string.IsNullOrWhiteSpace(why);

    private static IEnumerable<T> Last<T>(IEnumerable<T> facts, Func<T, string> number) =>
        facts.GroupBy(f => NameKey.Of(number(f))).Select(same => same.Last());
}
