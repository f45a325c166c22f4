using Witnessmark.Handbook.Fluids;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The contract of <c>oil-viscosity</c>.</summary>
internal static class OilViscosityContract
{
    private static readonly Input<Temperature> Wanted = Take.Quantity<Temperature>(
        "temperature",
        "where the viscosity is wanted, -70 °C to 340 °C"
    );

    public static Calculation Calculation { get; } =
        new(
            "oil-viscosity",
            "Fluids",
            "Viscosity of an oil at any temperature from those at 40 °C and 100 °C.",
            "ASTM D341-09 (2015), equations 1 to 3",
            typeof(OilViscosity),
            [ViscosityInputs.At40, ViscosityInputs.At100, Wanted],
            [
                new("viscosity", "mm²/s", "at the temperature wanted"),
                new("intercept", "1", "A"),
                new("slope", "1", "B"),
            ],
            given =>
                Reply.To(
                    OilViscosity.At(given.Of(ViscosityInputs.At40), given.Of(ViscosityInputs.At100), given.Of(Wanted)),
                    r =>
                        new Gives()
                            .With("viscosity", r.Viscosity, "mm²/s")
                            .With("intercept", r.Intercept, "1")
                            .With("slope", r.Slope, "1")
                )
        );
}
