using Witnessmark.Bench.AtThePoint;
using Witnessmark.Bench.Campaigns;
using Witnessmark.Bench.Day;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Record;

namespace Witnessmark.Client.Bench;

/// <summary>An entry in a short sentence.</summary>
internal static class EntryWords
{
    public static string Of(Entry entry, IReadOnlyList<PointState> points) =>
        Facts.Of(entry).Fact switch
        {
            ReadingFact reading => $"{Title(reading, points)}: {string.Join(", ", reading.Raw)}",
            CorrectionFact correction => $"{Title(correction, points)}: {Made(correction, points)}",
            FigureFact figure => $"{Title(figure, points)}: figure {figure.Draft.Demand} {figure.Draft.Printed}",
            VouchFact vouch => $"{Title(vouch, points)}: {vouch.Name} vouches for its figure",
            PhotographFact photograph => $"photograph “{photograph.Shows}”",
            MarkFact mark => $"{Title(mark, points)}: marked",
            LeftFact left => $"{Title(left, points)}: left as it is, {left.Why}",
            NoteFact note => $"note “{note.Text}”",
            CampaignLeftFact left => $"campaign {left.Number}: left open, {left.Why}",
            CampaignFact campaign =>
                $"campaign {campaign.Number}: {(campaign.Outcome == CampaignOutcome.Done ? "done" : "does not concern it")}",
            PromiseFact promise => $"promised for {ShopTime.Write(promise.At)}",
            PartsFact parts => $"parts arrive {ShopTime.Write(parts.Arrive)}",
            PlacedFact placed => $"placed in the day: {placed.Technician}, {ShopTime.Write(placed.Start)}",
            ReleaseFact release => $"released by {release.Name}",
            _ => entry.Kind,
        };

    private static string Made(CorrectionFact fact, IReadOnlyList<PointState> points) =>
        points.SelectMany(p => p.Corrections).FirstOrDefault(c => c.Entry.Id == fact.Entry.Id)?.Words ?? "corrected";

    private static string Title(Fact fact, IReadOnlyList<PointState> points) =>
        points.FirstOrDefault(p => p.Point.Id == fact.Point)?.Point.Title ?? fact.Point;
}
