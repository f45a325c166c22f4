using System.Text.Json.Nodes;
using Witnessmark.Handbook.Brakes;
using Witnessmark.Handbook.Measuring;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The contract of <c>brake-disc</c>.</summary>
internal static class BrakeDiscContract
{
    private static readonly Input<Length[]> Thicknesses = Take.List(
        Take.Positive<Length>("thicknesses", "readings round the disc")
    );
    private static readonly Input<Length> Minimum = Take.Positive<Length>(
        "minimum",
        "smallest permitted thickness, as stamped or from the maker"
    );
    private static readonly Input<Length> Runout = Take.Quantity<Length>(
            "runout",
            "whole travel of the gauge in a turn"
        )
        .OrNothing();
    private static readonly Input<Length> RunoutLimit = Take.Positive<Length>("runoutLimit", "largest permitted runout")
        .OrNothing();
    private static readonly Input<Length> VariationLimit = Take.Positive<Length>(
            "variationLimit",
            "largest permitted difference of thickness"
        )
        .OrNothing();

    public static Calculation Calculation { get; } =
        new(
            "brake-disc",
            "Brakes",
            "Whether a brake disc is thick, even and true enough.",
            "JCGM 106:2012, 7.2 to 7.4; 49 CFR 570.59(b); limits the user's own",
            typeof(BrakeDisc),
            [Thicknesses, Minimum, Runout, RunoutLimit, VariationLimit, LengthInstrument.Taken],
            [
                new("thinnest", "mm", "least thickness read"),
                new("variation", "mm", "thickest less thinnest; two or more readings"),
                new(
                    "verdicts",
                    "object",
                    "thickness, and where read and limited runout and variation: inside, outside or unproven"
                ),
                new("conformance", "object", "of the same keys: probability that the limit is kept"),
            ],
            given =>
                Reply.To(
                    BrakeDisc.Judge(
                        given.Of(Thicknesses),
                        given.Of(Minimum),
                        given.Maybe(Runout),
                        given.Maybe(RunoutLimit),
                        given.Maybe(VariationLimit),
                        given.Of(LengthInstrument.Taken)
                    ),
                    Write
                )
        );

    private static Gives Write(DiscJudged disc) =>
        new Gives()
            .With("thinnest", disc.Thinnest, "mm")
            .With("variation", disc.Variation, "mm")
            .With("verdicts", Each(disc, j => JsonValue.Create(j.Call.Word())))
            .With("conformance", Each(disc, j => Gives.Quantity(j.Conformance, "1")));

    private static JsonObject Each(DiscJudged disc, Func<Judged, JsonNode> of)
    {
        var each = new JsonObject { ["thickness"] = of(disc.Thickness) };
        if (disc.Runout is { } runout)
            each.Add("runout", of(runout));
        if (disc.Evenness is { } evenness)
            each.Add("variation", of(evenness));
        return each;
    }
}
