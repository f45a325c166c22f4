using Witnessmark.Handbook.Fluids;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The contract of <c>coolant-freezing</c>.</summary>
internal static class CoolantFreezingContract
{
    private static readonly Input<string> Kind = Take.OneOf("glycol", "which glycol", "ethylene", "propylene");
    private static readonly Input<Ratio> Fraction = GlycolShare.Taken(
        "volumeFraction",
        "glycol by volume of the mixture"
    );

    public static Calculation Calculation { get; } =
        new(
            "coolant-freezing",
            "Fluids",
            "At which temperature a coolant forms its first ice.",
            CoolantFreezing.Source,
            typeof(CoolantFreezing),
            [Kind, Fraction],
            [
                new("freezesAt", "°C", "first ice"),
                new("source", "text", "where freezesAt is from"),
                new("freezesAtElsewhere", "°C", "by Melinder, IIR 2010, left out where that has no rows"),
            ],
            given =>
                Reply.To(
                    CoolantFreezing.Of(
                        given.Of(Kind) == "ethylene" ? Glycol.Ethylene : Glycol.Propylene,
                        given.Of(Fraction)
                    ),
                    r =>
                        new Gives()
                            .With("freezesAt", r.FreezesAt, "°C")
                            .With("source", CoolantFreezing.Source)
                            .With("freezesAtElsewhere", r.Elsewhere, "°C")
                )
        );
}
