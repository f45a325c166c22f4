namespace Witnessmark.Tests.Groups;

/// <summary>A figure as a screen sets it.</summary>
internal static class Figures
{
    public const string SlackPrinted = "15 to 30 mm";

    /// <param name="revision">The revision that was looked at.</param>
    /// <param name="printed">What stands in the manual.</param>
    public static object Slack(int revision, string printed = SlackPrinted) =>
        new
        {
            revision,
            demand = "range",
            printed,
            origin = "maker: handbook p. 87",
            by = "Ines Tallow",
            why = "supplement of 2026-05",
        };
}
