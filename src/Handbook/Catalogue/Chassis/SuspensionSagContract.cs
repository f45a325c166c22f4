using Witnessmark.Handbook.Chassis;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The contract of <c>suspension-sag</c>.</summary>
internal static class SuspensionSagContract
{
    private static readonly Input<Force> SprungForce = Take.Positive<Force>(
        "sprungForce",
        "of the machine at the wheel, unsprung mass left out"
    );
    private static readonly Input<Force> RiderForce = Take.Positive<Force>(
        "riderForce",
        "what the rider adds at the wheel"
    );
    private static readonly Input<Stiffness> Rate = Take.Positive<Stiffness>(
        "springRate",
        "at the spring; both fork legs together"
    );
    private static readonly Input<Length> Preload = Take.Quantity<Length>(
        "preload",
        "compression of the spring when topped out"
    );
    private static readonly Input<Length> CollarPitch = Take.Positive<Length>("collarPitch", "preload for one turn");
    private static readonly Input<Length> TargetRiderSag = Take.Positive<Length>(
        "targetRiderSag",
        "wanted with the rider, in wheel travel"
    );
    private static readonly Input<Length> TargetStaticSag = Take.Quantity<Length>(
        "targetStaticSag",
        "wanted without, less than targetRiderSag"
    );
    private static readonly Input<Length> StaticMinimum = Take.Quantity<Length>(
        "staticMinimum",
        "least static sag accepted"
    );

    public static Calculation Calculation { get; } =
        new(
            "suspension-sag",
            "Chassis",
            "Sag without and with the rider, the preload for the target, and the spring for both targets.",
            "own derivation, checked by solving the equilibrium (docs/handbook/suspension-sag.md)",
            typeof(SuspensionSag),
            [
                SprungForce,
                RiderForce,
                Rate,
                Preload,
                MotionRatio.Taken,
                CollarPitch,
                TargetRiderSag,
                TargetStaticSag,
                StaticMinimum,
            ],
            [
                new("staticSag", "mm", "of the machine alone, as set"),
                new("riderSag", "mm", "with the rider, as set"),
                new("preloadChange", "mm", "brings the rider sag to its target; positive compresses the spring"),
                new("turns", "turn", "the same in turns; positive compresses the spring"),
                new("preloadAfter", "mm", "preload then; negative: the spring lies loose, the target cannot be set"),
                new("staticAfter", "mm", "static sag then"),
                new("staticEnough", "true or false", "whether it reaches the least accepted"),
                new("springForBoth", "N/mm", "spring that meets both targets"),
                new("preloadWithIt", "mm", "preload that this spring needs"),
            ],
            Set
        );

    private static Reply Set(Given given)
    {
        var targets = new SagTargets(given.Of(TargetRiderSag), given.Of(TargetStaticSag), given.Of(StaticMinimum));
        if (targets.Static >= targets.Rider)
            throw given.Wrong(TargetStaticSag.Name, "not less than targetRiderSag", "less than targetRiderSag");
        var setting = SuspensionSag.Of(
            new(given.Of(SprungForce), given.Of(RiderForce)),
            new(given.Of(Rate), given.Of(Preload), MotionRatio.In(given), given.Of(CollarPitch)),
            targets
        );
        return new Gives()
            .With("staticSag", setting.StaticSag, "mm")
            .With("riderSag", setting.RiderSag, "mm")
            .With("preloadChange", setting.PreloadChange, "mm")
            .With("turns", setting.Turns, "turn")
            .With("preloadAfter", setting.PreloadAfter, "mm")
            .With("staticAfter", setting.StaticAfter, "mm")
            .With("staticEnough", setting.StaticEnough)
            .With("springForBoth", setting.SpringForBoth, "N/mm")
            .With("preloadWithIt", setting.PreloadWithIt, "mm");
    }
}
