using System.Globalization;
using Witnessmark.Bench.Findings;
using Witnessmark.Bench.Jobs;

namespace Witnessmark.Estimates;

/// <summary>The findings of a job on the terminal.</summary>
internal static class FindingReport
{
    /// <param name="to">Where it is written.</param>
    /// <param name="state">The job.</param>
    public static void Write(TextWriter to, JobState state)
    {
        foreach (var finding in state.Findings)
        {
            to.WriteLine($"{finding.What} ({finding.Urgency.InWords()})");
            if (finding.Estimate is { } estimate)
                Write(to, estimate);
            else
                to.WriteLine("    no estimate was made");
            to.WriteLine($"  {FindingWords.Decided(finding) ?? "The owner has not decided on it."}");
            if (FindingWords.Outcome(finding) is { } outcome)
                to.WriteLine($"  {outcome}");
        }
    }

    private static void Write(TextWriter to, Estimate estimate)
    {
        foreach (var part in estimate.Parts)
            Line(to, $"{part.Item}, {part.Quantity} × {part.Price.Number}", part.Amount);
        if (estimate.Minutes > 0)
            Line(
                to,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"work, {estimate.Minutes} min × {estimate.Terms.Rate.Number} / h"
                ),
                estimate.Work
            );
        foreach (var tax in estimate.Taxes)
            Line(to, $"tax, {tax.Percent} % on {tax.Net.Number}", tax.Tax);
        Line(to, "total", estimate.Total);
    }

    private static void Line(TextWriter to, string words, Money money) => to.WriteLine($"    {words, -56} {money, 16}");
}
