using Witnessmark.Bench.Book;
using Witnessmark.Bench.Jobs;

namespace Witnessmark.Bench.Planning;

/// <summary>What to do today: the points that a purpose always takes, and those that the machine's state and record ask for.</summary>
public static class Proposal
{
    /// <summary>The lines in the book's order, each with its whys.</summary>
    public static IReadOnlyList<PlanLine> Of(Workbench bench, PlanQuestion asked)
    {
        List<(string Point, Reason Reason)> all =
        [
            .. Always(bench, asked),
            .. CampaignReasons.Of(asked),
            .. ConditionReasons.Of(asked),
            .. DueReasons.Of(asked),
            .. WearReasons.Of(bench.Book, asked),
        ];
        // a schedule or an old record may name what this machine does not have
        all.RemoveAll(r => !Has(r.Point));
        all.AddRange(NecessaryReasons.Of(bench.Book, [.. all], Has));
        return Lines(bench.Book, asked.Purpose, all);

        bool Has(string id) =>
            bench.Book.Points.TryGetValue(id, out var point) && bench.HasPoint(point, asked.Sheet, asked.Machine);
    }

    private static IEnumerable<(string, Reason)> Always(Workbench bench, PlanQuestion asked) =>
        bench
            .Plan(asked.Purpose, asked.Sheet, asked.Machine)
            .Select(p => (p.Point, new Reason(Because.Purpose, Sentence.Of(p.Why))));

    private static PlanLine[] Lines(BenchBook book, string purpose, List<(string Point, Reason Reason)> all)
    {
        var reasons = all.ToLookup(r => r.Point, r => r.Reason);
        return
        [
            .. BaseOrder
                .Of(reasons.Select(r => r.Key), purpose, book)
                .Select(id => new PlanLine(
                    book.Points[id],
                    [.. reasons[id].DistinctBy(r => r.Sentence).OrderBy(r => r.Because)]
                )),
        ];
    }
}
