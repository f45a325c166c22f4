using System.Text.Json.Nodes;
using Witnessmark.Handbook.Quantities;
using Witnessmark.Handbook.Wheels;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The contract of <c>wheel-balance</c>.</summary>
internal static class WheelBalanceContract
{
    // Every pair of weights is weighed up: more than this in one box nobody sorts through.
    private const int FullestBox = 500;

    private static readonly Input<double> Amount = Take.Number("amount", "how much, on any scale", 0, 1e9);
    private static readonly Input<Angle> Angle = Take.Signed<Angle>("angle", "where, from the mark on the wheel");
    private static readonly Input<Vibration> Initial = Read("initial", "reading without the trial weight");
    private static readonly Input<Mass> TrialMass = Take.Bounded<Mass>(
        "trialMass",
        "the trial weight",
        g => g is >= 1e-3 and <= 1e6,
        "0.001 g to 1000 kg"
    );
    private static readonly Input<Angle> TrialAngle = Take.Signed<Angle>("trialAngle", "where it was put");
    private static readonly Input<Vibration> WithTrial = Read("withTrial", "reading with it");
    private static readonly Input<Mass[]> Weights = Take.List(
            Take.Bounded<Mass>(
                "weights",
                "the box, one entry for each piece",
                g => g is > 0 and <= 1e6,
                "above 0 g, at most 1000 kg"
            ),
            0
        )
        .OrNothing();

    public static Calculation Calculation { get; } =
        new(
            "wheel-balance",
            "Wheels",
            "The weight that balances a wheel, and the weights of the box that come nearest.",
            "vector method in one plane; ISO 21940-11:2016 for what may remain",
            typeof(WheelBalance),
            [Initial, TrialMass, TrialAngle, WithTrial, Weights],
            [
                new("correction", "object", "mass (g) and angle (deg, 0 to 360) that would balance it exactly"),
                new("place", "list", "mass (g) and angle (deg) of none, one or two weights of the box"),
                new("residual", "g", "mass still missing when they are placed"),
                new("note", "text", "when the trial weight changed little"),
            ],
            Balance
        );

    private static Reply Balance(Given given)
    {
        var box = given.Has(Weights) ? given.Of(Weights) : null;
        if (box?.Length > FullestBox)
            throw given.Wrong("weights", $"{box.Length} weights", $"at most {FullestBox}");
        return Reply.To(
            WheelBalance.From(given.Of(Initial), given.Of(TrialMass), given.Of(TrialAngle), given.Of(WithTrial), box),
            b =>
                new Gives()
                    .With("correction", Placed(b.Correction))
                    .With("place", b.Placing is { } p ? new JsonArray([.. p.Weights.Select(Placed)]) : null)
                    .With("residual", b.Placing?.Residual, "g")
                    .With(
                        "note",
                        b.Faint
                            ? "The trial weight changed the reading by less than 30 % and 30°: take a heavier one for a result to trust."
                            : null
                    )
        );
    }

    private static JsonNode Placed(PlacedWeight weight) =>
        new Gives().With("mass", weight.Mass, "g").With("angle", weight.Angle, "deg").Json;

    private static Input<Vibration> Read(string name, string meaning) =>
        Take.Object(name, meaning, [Amount, Angle], g => new Vibration(g.Of(Amount), g.Of(Angle)));
}
