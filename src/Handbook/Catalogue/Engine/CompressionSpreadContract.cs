using Witnessmark.Handbook.Engine;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The contract of <c>compression-spread</c>.</summary>
internal static class CompressionSpreadContract
{
    private static readonly Input<Pressure[]> Pressures = Take.List(
        Take.Quantity<Pressure>("pressures", "one reading a cylinder")
    );
    private static readonly Input<Pressure> Min = Take.Quantity<Pressure>("min", "smallest permitted pressure");
    private static readonly Input<Pressure> LimitGiven = Take.Object(
            "limit",
            "what every cylinder must reach",
            [Min],
            g => g.Of(Min)
        )
        .OrNothing();
    private static readonly Input<Ratio> SpreadLimit = Take.Bounded<Ratio>(
        "spreadLimit",
        "largest permitted spread in % of the highest",
        b => b is >= 0 and <= 1,
        "0 % to 100 %"
    );

    public static Calculation Calculation { get; } =
        new(
            "compression-spread",
            "Engine",
            "How far the compression readings of the cylinders lie apart.",
            "arithmetic; comparing in per cent of the highest is common practice",
            typeof(CompressionSpread),
            [Pressures, LimitGiven, SpreadLimit],
            [
                new("lowest", "kPa", "lowest reading"),
                new("spread", "%", "highest less lowest, in per cent of the highest"),
                new("verdict", "inside or outside", "whether spread and lowest are permitted"),
            ],
            given =>
                Reply.To(
                    CompressionSpread.Of(given.Of(Pressures), given.Maybe(LimitGiven), given.Of(SpreadLimit)),
                    r =>
                        new Gives()
                            .With("lowest", r.Lowest, "kPa")
                            .With("spread", r.OfHighest, "%")
                            .With("verdict", r.Call.Word())
                )
        );
}
