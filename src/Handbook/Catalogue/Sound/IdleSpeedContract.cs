using Witnessmark.Handbook.Quantities;
using Witnessmark.Handbook.Sound;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The contract of <c>idle-speed</c>.</summary>
internal static class IdleSpeedContract
{
    private static readonly Input<Frequency> Pitch = Take.Positive<Frequency>(
        "frequency",
        "firing frequency; of an uneven firing order that of the whole engine cycle"
    );
    private static readonly Input<int> Cylinders = Take.Count("cylinders", "that fire, one after the other", 1, 24);
    private static readonly Input<string> FiringOrder = Take.OneOf(
            "firingOrder",
            "whether the cylinders fire at even intervals",
            "even",
            "uneven"
        )
        .Or("even", "even");
    private static readonly Input<int> Strokes = new Input<int>(
        "strokes",
        "2 or 4",
        "of a cycle",
        (e, path) =>
            Kinds.ReadNumber(e, path, "2 or 4", 2, 4) switch
            {
                2 => 2,
                4 => 4,
                _ => throw new MalformedGiven(path, Given.Found(e), "2 or 4"),
            }
    ).Or(4, "4") with
    {
        Shape = InputShape.Number,
    };

    public static Calculation Calculation { get; } =
        new(
            "idle-speed",
            "Sound",
            "Speed of an idling engine from the frequency of its exhaust.",
            "arithmetic: a four-stroke fires once every two turns",
            typeof(IdleSpeed),
            [Pitch, Cylinders, FiringOrder, Strokes],
            [new("engineSpeed", "1/min", "of the crankshaft")],
            given =>
                new Gives().With(
                    "engineSpeed",
                    IdleSpeed.Of(
                        given.Of(Pitch),
                        given.Of(Cylinders),
                        given.Of(FiringOrder) == "even",
                        given.Of(Strokes)
                    ),
                    "1/min"
                )
        );
}
