using Witnessmark.Bench.Findings;
using Witnessmark.Bench.Jobs;
using Witnessmark.Paper.Pdf;

namespace Witnessmark.Paper.Findings;

/// <summary>The findings on the handover sheet: how urgent, what it would cost, what the owner decided, what came of it.</summary>
public static class FindingList
{
    private const double SignatureWidth = 90;

    internal static void Write(Pages pages, JobState state)
    {
        if (state.Findings.Count == 0)
            return;
        pages.Begin($"What we found and told the owner", 36);
        foreach (var finding in Sorted(state.Findings))
            pages.Row(Row(finding), 3);
        pages.End();
    }

    /// <summary>The most urgent first, else as they were found.</summary>
    internal static IEnumerable<Finding> Sorted(IEnumerable<Finding> findings) => findings.OrderBy(f => f.Urgency);

    /// <summary>The sentences under a finding, in order, and whether each is loud.</summary>
    public static IEnumerable<(Sentence Line, bool Loud)> Of(Finding finding)
    {
        yield return (
            finding.Estimate is { } estimate
                ? (Sentence)$"Estimate: {Sentence.Number(estimate.Total.ToString())} with tax."
                : (Sentence)$"No estimate was made.",
            false
        );
        if (FindingWords.Decided(finding) is { } decided)
            yield return (decided, finding.DeclinedBeforeRiding);
        else
            yield return ($"The owner has not decided on it.", finding.Urgency == Urgency.BeforeRiding);
        if (FindingWords.Outcome(finding) is { } outcome)
            yield return (outcome, finding is { Urgency: Urgency.BeforeRiding, IsPutRight: false });
    }

    private static IReadOnlyList<Cell> Row(Finding finding)
    {
        var signature = finding.Decision?.Signature;
        var width = Pages.Width - (signature is null ? 0 : SignatureWidth + 10);
        var words = Cell.Of(
            0,
            width,
            [
                ($"{finding.What} ({finding.Urgency.InWords()})", Typeface.Strong),
                .. Of(finding).Select(s => ((Sentence?)s.Line, s.Loud ? Typeface.Strong : Typeface.Body)),
            ]
        );
        return signature is null
            ? [words]
            :
            [
                words,
                Cell.Of(
                    Pages.Width - SignatureWidth,
                    SignatureWidth,
                    SignatureDrawing.Of(signature, finding.Decision!.Name)
                ),
            ];
    }
}
