namespace Witnessmark.Bench.Campaigns;

/// <summary>All campaigns beside one machine.</summary>
public static class CampaignMatches
{
    /// <summary>
    /// One match a record, loud ones first, then those that concern, then the newest. Where the shop's own list has a
    /// campaign of the public list for this make, model and year too, the own record speaks: it knows more of the machines.
    /// </summary>
    public static IReadOnlyList<CampaignMatch> Of(IEnumerable<Campaign> campaigns, AskedMachine machine)
    {
        var matches = campaigns.Select(c => CampaignMatch.Of(c, machine)).Where(m => IsOfItsKind(m, machine)).ToList();
        var own = matches.Where(m => m.Campaign.Source == CampaignSource.Own).Select(Number).ToHashSet();
        return
        [
            .. matches
                .Where(m => m.Campaign.Source == CampaignSource.Own || !own.Contains(Number(m)))
                .OrderBy(m => m.Concern == Concern.DoesNot)
                .ThenByDescending(m => m.Campaign.Says.DoNotRide == true)
                .ThenByDescending(m => m.Campaign.Says.ParkOutside == true)
                .ThenBy(m => m.Concern)
                .ThenByDescending(m => m.Campaign.Says.Recorded)
                .ThenBy(m => m.Campaign.Number, StringComparer.Ordinal)
                .ThenBy(m => m.Campaign.Component, StringComparer.Ordinal)
                .ThenBy(m => m.Campaign.Model, StringComparer.Ordinal)
                .ThenBy(m => m.Campaign.Year),
        ];
    }

    /// <summary>Make, model and year leave room for it: what else speaks against it is worth telling.</summary>
    private static bool IsOfItsKind(CampaignMatch match, AskedMachine machine) =>
        match.Concern != Concern.DoesNot
        || CampaignMatch.Of(match.Campaign with { Source = CampaignSource.Public }, machine).Concern != Concern.DoesNot;

    private static string Number(CampaignMatch match) => NameKey.Of(match.Campaign.Number);
}
