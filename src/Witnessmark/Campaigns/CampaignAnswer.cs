using Witnessmark.Bench.Campaigns;
using Witnessmark.Ledger;
using Witnessmark.Ledger.Campaigns;

namespace Witnessmark.Campaigns;

/// <summary>What the shop's lists say of one machine, on the command line and over HTTP alike.</summary>
/// <param name="LookedUp">Whether there is any list to look in. False is not "no campaign".</param>
/// <param name="Machine">The machine that was asked about.</param>
/// <param name="Lists">The lists that were looked in.</param>
/// <param name="Campaigns">The matches, loud ones first.</param>
/// <param name="Withdrawn">What was withdrawn of the shop's own lists and would be among them.</param>
/// <param name="Alike">Models of that make with names that begin alike, not looked in.</param>
internal sealed record CampaignAnswer(
    bool LookedUp,
    AskedMachine Machine,
    IReadOnlyList<AnsweredList> Lists,
    IReadOnlyList<AnsweredCampaign> Campaigns,
    IReadOnlyList<AnsweredWithdrawal> Withdrawn,
    IReadOnlyList<string> Alike
)
{
    /// <summary>Looks in the lists of a shop, null when it has none; the reasons are said in a language.</summary>
    /// <exception cref="LedgerUnavailable">They cannot be read.</exception>
    public static CampaignAnswer Of(AskedMachine machine, CampaignStore? store, Tongue tongue)
    {
        var lists = store?.Lists() ?? [];
        return store is null || lists.Count == 0
            ? new(false, machine, [], [], [], [])
            : new(
                true,
                machine,
                [.. lists.Select(AnsweredList.Of)],
                [.. CampaignMatches.Of(store.Of(machine), machine).Select(m => AnsweredCampaign.Of(m, tongue))],
                AnsweredWithdrawal.Of(store, machine),
                store.Alike(machine)
            );
    }
}

/// <summary>A campaign of the shop's own lists that would concern the machine, or might, had nobody withdrawn it.</summary>
internal sealed record AnsweredWithdrawal(string Number, string Because, string By, string At)
{
    public static IReadOnlyList<AnsweredWithdrawal> Of(CampaignStore store, AskedMachine machine)
    {
        var numbers = CampaignMatches
            .Of(store.WithdrawnOf(machine), machine)
            .Where(m => m.Concern != Concern.DoesNot)
            .Select(m => NameKey.Of(m.Campaign.Number))
            .ToHashSet();
        return
        [
            .. store
                .WithdrawnSoFar()
                .Where(w => numbers.Contains(NameKey.Of(w.Number)))
                .GroupBy(w => NameKey.Of(w.Number))
                .Select(g => g.Last())
                .Select(w => new AnsweredWithdrawal(w.Number, w.Because, w.By, w.At)),
        ];
    }
}

/// <summary>One list that was looked in.</summary>
internal sealed record AnsweredList(string Source, string File, string At, long Rows, long SetAside)
{
    public static AnsweredList Of(ImportedList list) =>
        new(CampaignWords.Of(list.Source), list.File, list.At, list.Rows, list.SetAside);
}

/// <summary>One match.</summary>
internal sealed record AnsweredCampaign(
    string Number,
    string Make,
    string Model,
    int? Year,
    string Component,
    string Source,
    string Outcome,
    string Why,
    bool? DoNotRide,
    bool? ParkOutside,
    string Maker,
    string MakersNumber,
    DateOnly? Recorded,
    DateOnly? BuiltFrom,
    DateOnly? BuiltTo,
    int? Affected,
    IReadOnlyList<string> Vins,
    string Defect,
    string Consequence,
    string Remedy,
    string Notes
)
{
    public static AnsweredCampaign Of(CampaignMatch match, Tongue tongue)
    {
        var (campaign, says) = (match.Campaign, match.Campaign.Says);
        return new(
            campaign.Number,
            campaign.Make,
            campaign.Model,
            campaign.Year,
            campaign.Component,
            CampaignWords.Of(campaign.Source),
            CampaignWords.Of(match.Concern),
            match.Why.In(tongue),
            says.DoNotRide,
            says.ParkOutside,
            says.Maker,
            says.MakersNumber,
            says.Recorded,
            says.BuiltFrom,
            says.BuiltTo,
            says.Affected,
            says.Vins,
            says.Defect,
            says.Consequence,
            says.Remedy,
            says.Notes
        );
    }
}
