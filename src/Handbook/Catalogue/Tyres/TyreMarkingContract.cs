using Witnessmark.Handbook.Tyres;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The contract of <c>tyre-marking</c>.</summary>
internal static class TyreMarkingContract
{
    private static readonly Input<string> Marking = Take.Words(
        "marking",
        "as on the side wall, e.g. \"180/55 ZR 17 M/C (73W)\""
    );

    public static Calculation Calculation { get; } =
        new(
            "tyre-marking",
            "Tyres",
            "What the size and the letters on a tyre say: dimensions, load and speed.",
            "UNECE R75, definitions and annex 4",
            typeof(TyreMarking),
            [Marking],
            [
                new("width", "mm", "nominal width of the section"),
                new("aspect", "%", "height of the section over its width"),
                new("construction", "radial, beltedBias or bias", "how the cords lie"),
                new("rimCode", "count", "as marked"),
                new("rimDiameter", "mm", "nominal, by the table of R75"),
                new("overallDiameter", "mm", "design diameter of the new tyre"),
                new("loadIndex", "count", "as marked"),
                new("load", "kg", "largest mass on the tyre"),
                new("speedSymbol", "text", "as marked"),
                new("speed", "km/h", "of the symbol; none for Z alone"),
                new("note", "text", "what to mind about the marking"),
            ],
            given => Reply.To(TyreMarking.Read(given.Of(Marking)), Write)
        );

    private static Gives Write(MarkedTyre tyre)
    {
        var gives = new Gives()
            .With("width", tyre.Width, "mm")
            .With("aspect", tyre.Aspect, "%")
            .With("construction", Word(tyre.Construction))
            .With("rimCode", tyre.RimCode)
            .With("rimDiameter", tyre.RimDiameter, "mm")
            .With("overallDiameter", tyre.OverallDiameter, "mm");
        if (tyre.LoadIndex is { } index)
            gives.With("loadIndex", index);
        return gives
            .With("load", tyre.Load, "kg")
            .With("speedSymbol", tyre.SpeedSymbol)
            .With("speed", tyre.Speed, "km/h")
            .With("note", tyre.Note);
    }

    private static string Word(TyreConstruction construction) =>
        construction switch
        {
            TyreConstruction.Radial => "radial",
            TyreConstruction.BeltedBias => "beltedBias",
            TyreConstruction.Bias => "bias",
            _ => throw new ArgumentOutOfRangeException(nameof(construction), construction, null),
        };
}
