using Witnessmark.Bench.Campaigns;
using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Findings;

namespace Witnessmark.Bench.Jobs;

/// <summary>The one list of what keeps a job from leaving.</summary>
internal static class Holds
{
    /// <summary>What keeps a job that is worked on now.</summary>
    public static IReadOnlyList<Hold> Of(
        IReadOnlyList<PointState> points,
        IReadOnlyList<string> unknown,
        IReadOnlyList<FoundCampaign> doNotRide
    ) => Of(points, unknown, doNotRide, p => Unproven(p) ?? Unvouched(p) ?? Unchecked(p));

    /// <summary>What kept a job before names were asked for: what was signed then stays signed.</summary>
    public static IReadOnlyList<Hold> BeforeVouching(
        IReadOnlyList<PointState> points,
        IReadOnlyList<string> unknown,
        IReadOnlyList<FoundCampaign> doNotRide
    ) => Of(points, unknown, doNotRide, p => Unproven(p) ?? Unchecked(p));

    /// <summary>What the owner has to decide on, or has approved and nobody put right, before the machine is ridden.</summary>
    public static IReadOnlyList<Hold> OfFindings(IReadOnlyList<Finding> findings, IReadOnlyList<PointState> points) =>
        [
            .. findings
                .Select(f =>
                    (
                        f.Id,
                        f.Point,
                        Words: FindingWords.Hold(f, points.Any(p => p.Point.Id == f.Point && Unproven(p) is not null))
                    )
                )
                .Where(f => f.Words is not null)
                .Select(f => new Hold(null, Stripe.Outside, f.Words!) { Finding = f.Id }),
        ];

    private static IReadOnlyList<Hold> Of(
        IReadOnlyList<PointState> points,
        IReadOnlyList<string> unknown,
        IReadOnlyList<FoundCampaign> doNotRide,
        Func<PointState, Sentence?> missing
    ) =>
        [
            .. doNotRide.Select(c => new Hold(
                null,
                Stripe.Outside,
                $"Do not ride: campaign {c.Number} is open ({c.Component})."
            )),
            .. points
                .Select(p => missing(p) is { } why ? new Hold(p.Point.Id, Shape(p), $"{p.Point.Title}: {why}") : null)
                .OfType<Hold>(),
            .. unknown.Select(id => new Hold(
                null,
                Stripe.Unread,
                $"\"{id}\" is planned but the bench book has no such point."
            )),
        ];

    private static Sentence? Unproven(PointState point) =>
        point.Stripe switch
        {
            Stripe.Marked or Stripe.MarkedClose or Stripe.Left => null,
            Stripe.Unread => $"not read yet",
            Stripe.Inside or Stripe.Close => $"read, not marked yet",
            _ when point.Current is null => $"read again. {Sentence.List(point.AgainBecause, " ")}",
            _ when point.LacksFigure => WithoutFigure(point),
            _ => point.Current.Opinion.Headline.Inside(),
        };

    // how close the first reading is to its limit is not for the eyes of the second person
    private static Stripe Shape(PointState point) => point.Second is { Awaited: true } ? Stripe.Again : point.Stripe;

    private static Sentence? Unchecked(PointState point) =>
        point is { Second.Awaited: true, Left: null }
            ? (Sentence)$"a second person has still to read it, without seeing what the first one read"
            : null;

    private static Sentence? Unvouched(PointState point) =>
        point is { NeedsVouching: true, Vouched: null }
            ? point.Figure!.Origin.Kind == OriginKind.Shop
                ? (Sentence)$"judged by the workshop's figure, not the maker's: somebody has to vouch for it by name"
                : (Sentence)$"judged by a common-practice figure, not the maker's: somebody has to vouch for it by name"
            : null;

    private static Sentence WithoutFigure(PointState point) =>
        point.Disputed.Count > 0
            ? (Sentence)
                $"two devices gave its figure at the same time and differ ({Sentence.List(point.Disputed.Select(d => d.Figure.Short), " / ")}): give it once more"
            : (Sentence)
                $"read, but no figure judges it: take it from the manual at the point, or give the workshop's own";
}
