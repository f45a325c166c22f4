using Witnessmark.Handbook.Quantities;
using Witnessmark.Handbook.Tyres;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The contract of <c>tyre-pressure</c>.</summary>
internal static class TyrePressureContract
{
    private static readonly Input<Pressure> Gauge = Take.Quantity<Pressure>("gauge", "pressure read");
    private static readonly Input<Temperature> At = AboveZero("at", "temperature of the tyre when it was read");
    private static readonly Input<Temperature> WantedAt = AboveZero("wantedAt", "temperature asked about");
    private static readonly Input<Pressure> Atmosphere = Take.Positive<Pressure>("atmosphere", "of the air outside")
        .Or(TyrePressure.StandardAtmosphere, "101.325 kPa");

    public static Calculation Calculation { get; } =
        new(
            "tyre-pressure",
            "Tyres",
            "The pressure that a tyre read at one temperature shows at another.",
            "Gay-Lussac's law with absolute pressure",
            typeof(TyrePressure),
            [Gauge, At, WantedAt, Atmosphere],
            [new("gauge", "kPa", "pressure above that of the air outside")],
            given =>
                new Gives().With(
                    "gauge",
                    TyrePressure.At(given.Of(Gauge), given.Of(At), given.Of(WantedAt), given.Of(Atmosphere)),
                    "kPa"
                )
        );

    private static Input<Temperature> AboveZero(string name, string meaning) =>
        Take.Bounded<Temperature>(name, meaning, b => b > -TyrePressure.FreezingPoint, "above -273.15 °C");
}
