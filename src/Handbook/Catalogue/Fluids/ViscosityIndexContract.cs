using Witnessmark.Handbook.Fluids;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The contract of <c>viscosity-index</c>.</summary>
internal static class ViscosityIndexContract
{
    public static Calculation Calculation { get; } =
        new(
            "viscosity-index",
            "Fluids",
            "How little an oil thins with warmth.",
            "ASTM D2270-10 (2016), procedures A and B, table 1",
            typeof(ViscosityIndex),
            [ViscosityInputs.At40, ViscosityInputs.At100],
            [
                new("index", "1", "viscosity index, a whole number"),
                new("procedure", "A or B", "A below an index of 100, B from there"),
                new("low", "mm²/s", "L: at 40 °C, an oil of index 0 as thick at 100 °C"),
                new("high", "mm²/s", "H: the same of an oil of index 100"),
            ],
            given =>
                Reply.To(
                    ViscosityIndex.Of(given.Of(ViscosityInputs.At40), given.Of(ViscosityInputs.At100)),
                    r =>
                        new Gives()
                            .With("index", r.Index, "1")
                            .With("procedure", r.Procedure.ToString())
                            .With("low", r.Low, "mm²/s")
                            .With("high", r.High, "mm²/s")
                )
        );
}
