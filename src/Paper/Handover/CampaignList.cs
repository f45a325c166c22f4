using Witnessmark.Bench.Campaigns;
using Witnessmark.Bench.Jobs;
using Witnessmark.Paper.Pdf;

namespace Witnessmark.Paper.Handover;

/// <summary>Recalls and bulletins: what was settled on this job, and what is still open. Says nothing where the job carries nothing.</summary>
public static class CampaignList
{
    internal static Sentence Heading => $"Recalls and bulletins";

    internal static void Write(Pages pages, JobState state) => LineList.Write(pages, Heading, Of(state));

    /// <summary>The sentences in order, the open ones first, and whether they are loud.</summary>
    public static IEnumerable<(Sentence Line, bool Loud)> Of(JobState state)
    {
        foreach (var open in state.CampaignsOpen ?? [])
            yield return (Open(open), open.DoNotRide || open.ParkOutside);
        foreach (var left in StillOpen(state))
            yield return ($"It leaves with {left.Number} open, decided by {left.Entry.By}: {left.Why}", true);
        foreach (var settled in state.CampaignsDone)
            yield return (Settled(settled), false);
        if (state.Arrival?.Campaigns is { Count: 0 })
            yield return ($"None was found in the shop's lists when the machine arrived.", false);
        else if (state.CampaignsDone.Count > 0 && state.Arrival is { Campaigns: null })
            yield return ($"Others were not looked up when the machine arrived.", false);
    }

    private static IEnumerable<CampaignLeft> StillOpen(JobState state)
    {
        var open = (state.CampaignsOpen ?? []).Select(c => NameKey.Of(c.Number)).ToHashSet();
        return state.CampaignsLeft.Where(l => open.Contains(NameKey.Of(l.Number)));
    }

    private static Sentence Open(FoundCampaign campaign) =>
        Sentence.Line(
            $"Open:",
            campaign.DoNotRide ? (Sentence)$"DO NOT RIDE." : null,
            campaign.ParkOutside ? (Sentence)$"PARK OUTSIDE." : null,
            campaign.Certain
                ? (Sentence)$"{campaign.Number}, {campaign.Component}: it concerns this machine."
                : (Sentence)
                    $"{campaign.Number}, {campaign.Component}: it may concern this machine, check with the maker."
        );

    private static Sentence Settled(CampaignSettled settled) =>
        settled.Outcome == CampaignOutcome.Done
            ? (Sentence)$"Done: {Numbered(settled)} ({settled.Entry.By})"
            : (Sentence)$"Does not concern this machine: {Numbered(settled)} ({settled.Entry.By})";

    private static Sentence Numbered(CampaignSettled settled) =>
        settled.Why is { Length: > 0 } why ? (Sentence)$"{settled.Number}, {why}" : (Sentence)$"{settled.Number}";
}
