using Witnessmark.Bench.Campaigns;

namespace Witnessmark.Bench.Planning;

/// <summary>What open campaigns ask for.</summary>
internal static class CampaignReasons
{
    // the book's points for campaigns: asked by number, done, reported
    private const string Open = "campaign-open";
    private static readonly string[] Work = ["campaign-work", "campaign-report"];

    public static IEnumerable<(string Point, Reason Reason)> Of(PlanQuestion asked)
    {
        // one campaign may stand in the lists with several components
        foreach (var found in (asked.Campaigns ?? []).GroupBy(c => NameKey.Of(c.Number)))
        {
            var certain = found.Any(c => c.Certain);
            var why = new Reason(Because.Campaign, InWords(found.First(), certain, found.Any(c => c.DoNotRide)));
            yield return (Open, why);
            foreach (var point in certain ? Work : [])
                yield return (point, why);
        }
    }

    private static Sentence InWords(FoundCampaign campaign, bool certain, bool doNotRide) =>
        (certain, doNotRide) switch
        {
            (true, true) =>
                $"Campaign {campaign.Number} ({campaign.Component}) concerns this machine; its notice says not to ride until it is done.",
            (true, false) => $"Campaign {campaign.Number} ({campaign.Component}) concerns this machine.",
            (false, true) =>
                $"Campaign {campaign.Number} ({campaign.Component}) may concern this machine: check with the maker; its notice says not to ride until it is done.",
            _ => $"Campaign {campaign.Number} ({campaign.Component}) may concern this machine: check with the maker.",
        };
}
