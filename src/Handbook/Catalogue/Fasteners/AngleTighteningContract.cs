using Witnessmark.Handbook.Fasteners;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The contract of <c>angle-tightening</c>.</summary>
internal static class AngleTighteningContract
{
    private static readonly Input<Torque> Snug = Take.Bounded<Torque>(
        "snugTorque",
        "first stage",
        nm => nm is >= 0 and <= 100_000,
        "zero or more, at most 100000 N·m"
    );
    private static readonly Input<double> NutFactor = Take.Number("nutFactor", "K of T = K·d·F", 0.01, 1);
    private static readonly Input<Length> Diameter = Take.Bounded<Length>(
        "diameter",
        "nominal diameter of the thread",
        mm => mm is >= 0.1 and <= 1000,
        "0.1 mm to 1 m"
    );
    private static readonly Input<Length> Pitch = Take.Positive<Length>("pitch", "pitch of the thread");
    private static readonly Input<Stiffness> Bolt = Take.Bounded<Stiffness>(
        "boltStiffness",
        "of the bolt",
        k => k is >= 1e-3 and <= 1e9,
        "0.001 to 1e9 N/mm"
    );
    private static readonly Input<Stiffness> Joint = Take.Bounded<Stiffness>(
        "jointStiffness",
        "of the clamped parts",
        k => k is >= 1e-3 and <= 1e9,
        "0.001 to 1e9 N/mm"
    );
    private static readonly Input<Angle> Turn = Take.Bounded<Angle>(
        "angle",
        "second stage",
        rad => rad is >= 0 and <= 4 * Math.PI,
        "zero or more, at most 720 deg"
    );

    public static Calculation Calculation { get; } =
        new(
            "angle-tightening",
            "Fasteners",
            "Preload of a bolt tightened to a torque and then by an angle.",
            "own derivation, checked by stepping; Shigley, Mechanical Engineering Design, 8-8",
            typeof(AngleTightening),
            [Snug, NutFactor, Diameter, Pitch, Bolt, Joint, Turn],
            [
                new("snugPreload", "N", "by the torque"),
                new("addedPreload", "N", "by the angle"),
                new("preload", "N", "both together"),
            ],
            Tighten
        );

    private static Reply Tighten(Given given)
    {
        var (diameter, pitch) = (given.Of(Diameter), given.Of(Pitch));
        if (pitch >= diameter)
            throw given.Wrong("pitch", "not less than the diameter", "the pitch of the thread");
        var staged = AngleTightening.From(
            given.Of(Snug),
            given.Of(NutFactor),
            diameter,
            pitch,
            given.Of(Bolt),
            given.Of(Joint),
            given.Of(Turn)
        );
        return new Gives()
            .With("snugPreload", staged.Snug, "N")
            .With("addedPreload", staged.Added, "N")
            .With("preload", staged.Total, "N");
    }
}
