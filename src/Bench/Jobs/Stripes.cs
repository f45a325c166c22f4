using Witnessmark.Bench.Judging;

namespace Witnessmark.Bench.Jobs;

/// <summary>The stripe of a verdict.</summary>
public static class Stripes
{
    /// <summary>Of a point that was read and is not marked.</summary>
    public static Stripe Unmarked(VerdictWord verdict) =>
        verdict switch
        {
            VerdictWord.Inside => Stripe.Inside,
            VerdictWord.Close => Stripe.Close,
            VerdictWord.Outside => Stripe.Outside,
            VerdictWord.Unproven => Stripe.Unproven,
            VerdictWord.Unread => Stripe.Unread,
            _ => throw new ArgumentOutOfRangeException(nameof(verdict), verdict, null),
        };
}
