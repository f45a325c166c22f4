using Witnessmark.Handbook.Quantities;
using Witnessmark.Handbook.Sound;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The contract of <c>belt-tension</c>.</summary>
internal static class BeltTensionContract
{
    private static readonly Input<Frequency> Pitch = Take.Positive<Frequency>(
        "frequency",
        "of the free span when plucked"
    );
    private static readonly Input<Length> FreeSpan = Take.Positive<Length>(
        "freeSpan",
        "from where the belt leaves one pulley to where it meets the other"
    );
    private static readonly Input<LinearDensity> Mass = Take.Positive<LinearDensity>(
        "massPerLength",
        "of the belt; weigh it, or the maker's figure times its width"
    );

    public static Calculation Calculation { get; } =
        new(
            "belt-tension",
            "Sound",
            "Tension of a belt from the frequency of its plucked span.",
            "transverse vibration of a string, OpenStax University Physics 1, 16.6",
            typeof(BeltTension),
            [Pitch, FreeSpan, Mass],
            [new("tension", "N", "of the belt at rest")],
            given =>
                new Gives().With("tension", BeltTension.Of(given.Of(Pitch), given.Of(FreeSpan), given.Of(Mass)), "N")
        );
}
