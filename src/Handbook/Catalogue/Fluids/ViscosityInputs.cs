using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The two viscosities on an oil's data sheet.</summary>
internal static class ViscosityInputs
{
    public static Input<Viscosity> At40 { get; } =
        Take.Positive<Viscosity>("viscosity40", "kinematic viscosity at 40 °C");

    public static Input<Viscosity> At100 { get; } =
        Take.Positive<Viscosity>("viscosity100", "kinematic viscosity at 100 °C");
}
