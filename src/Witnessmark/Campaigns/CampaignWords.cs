using Witnessmark.Bench.Campaigns;

namespace Witnessmark.Campaigns;

/// <summary>The words that stand for sources and outcomes in JSON.</summary>
internal static class CampaignWords
{
    public static string Of(CampaignSource source) => source == CampaignSource.Public ? "public" : "own";

    public static string Of(Concern concern) =>
        concern switch
        {
            Concern.Concerns => "concerns",
            Concern.MayConcern => "may-concern",
            _ => "does-not",
        };
}
