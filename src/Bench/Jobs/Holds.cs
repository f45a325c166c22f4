using Witnessmark.Bench.Campaigns;

namespace Witnessmark.Bench.Jobs;

/// <summary>The one list of what keeps a job from leaving.</summary>
internal static class Holds
{
    public static IReadOnlyList<Hold> Of(
        IReadOnlyList<PointState> points,
        IReadOnlyList<string> unknown,
        IReadOnlyList<FoundCampaign> doNotRide
    ) =>
        [
            .. doNotRide.Select(c => new Hold(
                null,
                Stripe.Outside,
                $"Do not ride: campaign {c.Number} is open ({c.Component})."
            )),
            .. points.Select(Of).OfType<Hold>(),
            .. unknown.Select(id => new Hold(
                null,
                Stripe.Unread,
                $"\"{id}\" is planned but the bench book has no such point."
            )),
        ];

    private static Hold? Of(PointState point) =>
        Missing(point) is { } missing ? new(point.Point.Id, point.Stripe, $"{point.Point.Title}: {missing}") : null;

    private static string? Missing(PointState point) =>
        point.Stripe switch
        {
            Stripe.Marked or Stripe.MarkedClose or Stripe.Left => null,
            Stripe.Unread => "not read yet",
            Stripe.Inside or Stripe.Close => "read, not marked yet",
            _ when point.Current is null => $"read again. {string.Join(" ", point.AgainBecause)}",
            _ => Lower(point.Current.Opinion.Headline),
        };

    private static string Lower(string headline) => char.ToLowerInvariant(headline[0]) + headline[1..];
}
