using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Photographs;
using Witnessmark.Bench.Record;

namespace Witnessmark.Bench.Findings;

/// <summary>
/// The findings of a job. The last word on a finding counts, and the last estimate. A decision covers what the owner was told, so that a
/// finding or an estimate that says something else afterwards asks for the decision again.
/// </summary>
internal static class FindingFold
{
    /// <summary>The findings in the order in which they were found.</summary>
    public static IReadOnlyList<Finding> Of(
        IReadOnlyList<Fact> live,
        IReadOnlyList<Photograph> photographs,
        List<(Entry, Sentence)> notUnderstood
    )
    {
        var findings = live.OfType<FindingFact>()
            .GroupBy(f => f.Finding, StringComparer.Ordinal)
            .Select(said => One([.. said], live, photographs))
            .ToList();
        foreach (var fact in live)
            if (About(fact) is { } id && findings.TrueForAll(f => f.Id != id))
                notUnderstood.Add((fact.Entry, $"this job has no finding \"{id}\""));
        return findings;
    }

    /// <summary>
    /// The facts, with the points of approved findings taken into the plan by their decision. A decision that no longer covers its
    /// finding still keeps the point in the plan: work may have begun.
    /// </summary>
    public static IReadOnlyList<Fact> IntoPlan(
        IReadOnlyList<Fact> live,
        IReadOnlyList<Finding> findings,
        Func<string, bool> hasPoint
    )
    {
        var approved = findings.Where(f => f.LastWord is { Approved: true } && hasPoint(f.Point)).ToList();
        return approved.Count == 0
            ? live
            :
            [
                .. live.SelectMany(fact =>
                    approved.Find(f => f.LastWord!.Entry.Id == fact.Entry.Id) is { } finding
                        ? [fact, new PlannedFact(fact.Entry, FindingWords.Why(finding)) { Point = finding.Point }]
                        : new[] { fact }
                ),
            ];
    }

    /// <summary>The findings with the marks that put them right.</summary>
    public static IReadOnlyList<Finding> WithMarks(IReadOnlyList<Finding> findings, IReadOnlyList<PointState> points) =>
        [
            .. findings.Select(f =>
                f with
                {
                    Marked =
                        points.FirstOrDefault(p => p.Point.Id == f.Point)?.Marked is { } mark
                        && CausalOrder.Saw(mark, f.Since)
                            ? mark
                            : null,
                }
            ),
        ];

    private static string? About(Fact fact) =>
        fact switch
        {
            EstimateFact estimate => estimate.Finding,
            DecisionFact decision => decision.Finding,
            PutRightFact right => right.Finding,
            _ => null,
        };

    private static Finding One(
        IReadOnlyList<FindingFact> said,
        IReadOnlyList<Fact> live,
        IReadOnlyList<Photograph> photographs
    )
    {
        var last = said[^1];
        var since = said.Reverse().TakeWhile(f => f.What == last.What && f.Urgency == last.Urgency).Last().Entry;
        var words = live.OfType<DecisionFact>().Where(d => d.Finding == last.Finding).Select(d => d.Decision).ToList();
        var right = live.OfType<PutRightFact>()
            .LastOrDefault(r => r.Finding == last.Finding && CausalOrder.Saw(r.Entry, since));
        var finding = new Finding(
            last.Finding,
            last.Entry,
            since,
            last.Point,
            last.What,
            last.Urgency,
            [.. photographs.Where(p => last.Photographs.Contains(p.Picture.Sha256))],
            live.OfType<EstimateFact>().LastOrDefault(e => e.Finding == last.Finding)?.Estimate,
            null
        )
        {
            LastWord = words.LastOrDefault(),
            PutRight = right is null ? null : (right.Entry, right.How),
        };
        return Decided(finding, words);
    }

    private static Finding Decided(Finding finding, IReadOnlyList<Decision> words)
    {
        if (finding.LastWord is not { } last || last.Told != finding.Told)
            return finding;
        var disputed = words.Any(w =>
            w.Approved != last.Approved && w.Told == last.Told && !CausalOrder.Saw(last.Entry, w.Entry)
        );
        return disputed ? finding with { Disputed = true } : finding with { Decision = last };
    }
}
