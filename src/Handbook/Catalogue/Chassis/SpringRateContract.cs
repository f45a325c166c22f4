using Witnessmark.Handbook.Chassis;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The contract of <c>spring-rate</c>.</summary>
internal static class SpringRateContract
{
    private static readonly Input<Force> RiderForce = Take.Positive<Force>(
        "riderForce",
        "what the rider adds at the wheel"
    );
    private static readonly Input<Length> StaticSag = Take.Quantity<Length>(
        "staticSag",
        "of the machine alone, in wheel travel"
    );
    private static readonly Input<Length> RiderSag = Take.Positive<Length>(
        "riderSag",
        "with the rider, more than staticSag"
    );

    public static Calculation Calculation { get; } =
        new(
            "spring-rate",
            "Chassis",
            "Rate of the spring that is fitted, from the sag without and with the rider.",
            "own derivation (docs/handbook/spring-rate.md)",
            typeof(SpringRate),
            [RiderForce, StaticSag, RiderSag, MotionRatio.Taken],
            [new("springRate", "N/mm", "at the spring; both fork legs together")],
            Weigh
        );

    private static Reply Weigh(Given given)
    {
        var (without, with) = (given.Of(StaticSag), given.Of(RiderSag));
        if (without.Millimetres > 0 && with <= without)
            throw given.Wrong(RiderSag.Name, "not more than staticSag", "more than staticSag");
        return Reply.To(
            SpringRate.From(given.Of(RiderForce), without, with, MotionRatio.In(given)),
            s => new Gives().With("springRate", s.Rate, "N/mm")
        );
    }
}
