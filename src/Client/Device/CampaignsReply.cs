namespace Witnessmark.Client.Device;

/// <summary>What the shop's lists say of one machine.</summary>
internal sealed record CampaignsReply(
    bool LookedUp,
    IReadOnlyList<CampaignsList> Lists,
    IReadOnlyList<CampaignReply> Campaigns
);

/// <summary>A list that was looked in, and when it was taken in.</summary>
internal sealed record CampaignsList(string File, string At);

/// <summary>A campaign beside the machine; <paramref name="Outcome"/> is <c>concerns</c>, <c>may-concern</c> or <c>does-not</c>.</summary>
internal sealed record CampaignReply(
    string Number,
    string Component,
    string Outcome,
    string Why,
    bool? DoNotRide,
    bool? ParkOutside,
    string Defect,
    string Consequence,
    string Remedy
)
{
    /// <summary>Whose list it stands in, <c>public</c> or <c>own</c>; null from a shop's program that does not say it yet.</summary>
    public string? Source { get; init; }

    /// <summary>The language of its texts, where that is known: the regulator's file is written in English.</summary>
    public string? Language => Source == "public" ? "en" : null;
}
