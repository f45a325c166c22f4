using Witnessmark.Handbook.Fluids;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The contract of <c>brake-fluid</c>.</summary>
internal static class BrakeFluidContract
{
    private static readonly Input<string> Grade = Take.OneOf(
        "grade",
        "as on the reservoir's cap",
        [.. BrakeFluid.Grades]
    );
    private static readonly Input<Temperature> BoilingPoint = Take.Quantity<Temperature>(
        "boilingPoint",
        "as measured of fluid from the system"
    );

    public static Calculation Calculation { get; } =
        new(
            "brake-fluid",
            "Fluids",
            "Whether the boiling point of a brake fluid is still that of its grade.",
            "49 CFR 571.116 (FMVSS 116), S5.1.1 and S5.1.2",
            typeof(BrakeFluid),
            [Grade, BoilingPoint],
            [
                new("dryMinimum", "°C", "least boiling point of new fluid"),
                new("wetMinimum", "°C", "least boiling point of humidified fluid"),
                new("verdict", "fresh, ageing or replace", "replace: below the wet minimum"),
            ],
            given =>
                Reply.To(
                    BrakeFluid.Of(given.Of(Grade), given.Of(BoilingPoint)),
                    r =>
                        new Gives()
                            .With("dryMinimum", r.DryMinimum, "°C")
                            .With("wetMinimum", r.WetMinimum, "°C")
                            .With("verdict", Word(r.State))
                )
        );

    private static string? Word(FluidState? state) =>
        state switch
        {
            FluidState.Fresh => "fresh",
            FluidState.Ageing => "ageing",
            FluidState.Replace => "replace",
            null => null,
            _ => throw new ArgumentOutOfRangeException(nameof(state), state, null),
        };
}
