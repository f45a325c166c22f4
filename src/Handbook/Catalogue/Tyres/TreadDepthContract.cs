using Witnessmark.Handbook.Quantities;
using Witnessmark.Handbook.Tyres;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The contract of <c>tread-depth</c>.</summary>
internal static class TreadDepthContract
{
    private static readonly Input<Length[]> Depths = Take.List(
        Take.Quantity<Length>("depths", "readings where the tread is shallowest")
    );
    private static readonly Input<string> Jurisdiction = Take.Words(
        "jurisdiction",
        "whose law counts, e.g. \"DE\" or \"Germany\""
    );
    private static readonly Input<string> Vehicle = Take.OneOf(
            "vehicle",
            "as which the law counts the machine",
            "motorcycle",
            "moped"
        )
        .Or("motorcycle", "\"motorcycle\"");
    private static readonly Input<Length> ShopMinimum = Take.Positive<Length>(
            "shopMinimum",
            "what the shop asks for itself; counts where the law asks for less"
        )
        .OrNothing();

    public static Calculation Calculation { get; } =
        new(
            "tread-depth",
            "Tyres",
            "Whether the tread is deep enough for the law of the place and for the shop.",
            "the law of the place, with its clause; JCGM 106:2012, 7.2 to 7.4",
            typeof(TreadDepth),
            [Depths, Jurisdiction, Vehicle, LengthInstrument.Taken, ShopMinimum],
            [
                new("thinnest", "mm", "least depth read"),
                new("minimum", "mm", "the depth that counts"),
                new("minimumFrom", "law or shop", "whose it is"),
                new("clause", "text", "where the law stands"),
                new("asks", "text", "where the law wants the depth, or what it asks in place of one"),
                new("verdict", "inside, outside or unproven", "what the thinnest place proves"),
                new("conformance", "1", "probability that the minimum is kept"),
            ],
            given =>
                Reply.To(
                    TreadDepth.Judge(
                        given.Of(Depths),
                        given.Of(Jurisdiction),
                        given.Of(Vehicle) == "moped" ? RoadVehicle.Moped : RoadVehicle.Motorcycle,
                        given.Of(LengthInstrument.Taken),
                        given.Maybe(ShopMinimum)
                    ),
                    Write
                )
        );

    private static Gives Write(TreadJudged tread)
    {
        var gives = new Gives().With("thinnest", tread.Thinnest, "mm").With("minimum", tread.Minimum, "mm");
        if (tread.Minimum is not null)
            gives.With("minimumFrom", tread.ByShop ? "shop" : "law");
        return gives
            .With("clause", tread.Clause)
            .With("asks", tread.Asks)
            .With("verdict", tread.Judged?.Call.Word())
            .With("conformance", tread.Judged?.Conformance, "1");
    }
}
