namespace Witnessmark.Bench.Campaigns;

/// <summary>
/// What is left to do: campaigns that concern a machine or may, without those whose number is settled (done, or found not to
/// concern it). Numbers are compared as <see cref="NameKey"/> does: people write <c>26X-004</c> and <c>26x 004</c>.
/// </summary>
public static class OpenCampaigns
{
    /// <summary>Of a lookup.</summary>
    public static IReadOnlyList<CampaignMatch> Of(IEnumerable<CampaignMatch> matches, IEnumerable<string> settled) =>
        Left(matches.Where(m => m.Concern != Concern.DoesNot), m => m.Campaign.Number, settled);

    /// <summary>Of those that were found when the machine arrived.</summary>
    public static IReadOnlyList<FoundCampaign> Of(IEnumerable<FoundCampaign> found, IEnumerable<string> settled) =>
        Left(found, f => f.Number, settled);

    private static IReadOnlyList<T> Left<T>(IEnumerable<T> all, Func<T, string> number, IEnumerable<string> settled)
    {
        var done = settled.Select(NameKey.Of).ToHashSet();
        return [.. all.Where(c => !done.Contains(NameKey.Of(number(c))))];
    }
}
