using Witnessmark.Bench.AtThePoint;
using Witnessmark.Bench.Campaigns;
using Witnessmark.Bench.Day;
using Witnessmark.Bench.Findings;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Planning;
using Witnessmark.Bench.Record;

namespace Witnessmark.Client.Bench;

/// <summary>An entry in a short sentence.</summary>
internal static class EntryWords
{
    public static string Of(Entry entry, IReadOnlyList<PointState> points) =>
        Facts.Of(entry).Fact switch
        {
            ReadingFact reading when IsHidden(reading, points) => Say($"{Title(reading, points)}: a reading"),
            ReadingFact reading => $"{Title(reading, points)}: {string.Join(", ", reading.Raw.Select(Digits))}",
            SecondReadingFact second =>
                $"{Title(second, points)}, {Inside(SecondWords.Title)}: {string.Join(", ", second.Reading.Raw.Select(Digits))}",
            CorrectionFact correction => $"{Title(correction, points)}: {Made(correction, points)}",
            FigureFact figure => Say($"{Title(figure, points)}: figure {figure.Draft.Demand} {figure.Draft.Printed}"),
            VouchFact vouch => Say($"{Title(vouch, points)}: {vouch.Name} vouches for its figure"),
            PhotographFact photograph => Say($"photograph “{photograph.Shows}”"),
            MarkFact mark => Say($"{Title(mark, points)}: marked"),
            LeftFact left => Say($"{Title(left, points)}: left as it is, {left.Why}"),
            NoteFact note => Say($"note “{note.Text}”"),
            CampaignLeftFact left => Say($"campaign {left.Number}: left open, {left.Why}"),
            CampaignFact campaign => Say(
                $"campaign {campaign.Number}: {(campaign.Outcome == CampaignOutcome.Done ? Say($"done") : Say($"does not concern it"))}"
            ),
            PromiseFact promise => Say($"promised for {Moment(promise.At)}"),
            PartsFact parts => Say($"parts arrive {Moment(parts.Arrive)}"),
            PlacedFact placed => Say($"placed in the day: {placed.Technician}, {Moment(placed.Start)}"),
            ReleaseFact release => Say($"released by {release.Name}"),
            PlannedFact added => Say($"{Title(added, points)}: taken into the plan, {WrittenWhy.Of(added.Why)}"),
            DroppedFact dropped => Say($"{Title(dropped, points)}: dropped, {dropped.Why}"),
            FindingFact finding => Say($"finding “{finding.What}”"),
            EstimateFact => Say($"what a finding costs"),
            DecisionFact decision => Say($"the owner's word, given by {decision.Decision.Name}"),
            PutRightFact right => Say($"put right: {right.How}"),
            _ => entry.Kind,
        };

    private static string Made(CorrectionFact fact, IReadOnlyList<PointState> points) =>
        points.SelectMany(p => p.Corrections).FirstOrDefault(c => c.Entry.Id == fact.Entry.Id) is { Words: var words }
            ? Say(words)
            : Say($"corrected");

    // on a device that two people share the last entry may be the one that the second is not to see
    private static bool IsHidden(Fact fact, IReadOnlyList<PointState> points) =>
        points.FirstOrDefault(p => p.Point.Id == fact.Point)?.Second is { Hidden: true };

    private static string Title(Fact fact, IReadOnlyList<PointState> points) =>
        points.FirstOrDefault(p => p.Point.Id == fact.Point) is { } known ? Known(known.Point.Title) : fact.Point;
}
