using Witnessmark.Handbook.Lights;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The contract of <c>headlamp-aim</c>.</summary>
internal static class HeadlampAimContract
{
    private static readonly Input<Length> Distance = Take.Positive<Length>("distance", "from the lens to the wall");
    private static readonly Input<Length> LampHeight = Take.Positive<Length>("lampHeight", "centre of the lamp");
    private static readonly Input<Length> CutoffHeight = Take.Quantity<Length>(
        "cutoffHeight",
        "of the cut-off on the wall"
    );
    private static readonly Input<Ratio> Min = Take.Signed<Ratio>("min", "least permitted, down positive");
    private static readonly Input<Ratio> Max = Take.Signed<Ratio>("max", "largest permitted, down positive");
    private static readonly Input<(Ratio Min, Ratio Max)> LimitGiven = Take.Object(
        "limit",
        "inclination that local law or the maker permits",
        [Min, Max],
        g => (g.Of(Min), g.Of(Max))
    );

    public static Calculation Calculation { get; } =
        new(
            "headlamp-aim",
            "Lights",
            "How far the beam of a headlamp falls over a distance, and whether that is permitted.",
            "drop over distance as in UNECE R53, 6.2.5",
            typeof(HeadlampAim),
            [Distance, LampHeight, CutoffHeight, LimitGiven],
            [
                new("drop", "mm", "lamp height less cut-off height; negative rises"),
                new("inclination", "%", "drop over distance"),
                new("verdict", "inside or outside", "whether it is permitted"),
                new("cutoffLowest", "mm", "lowest permitted cut-off on this wall"),
                new("cutoffHighest", "mm", "highest permitted cut-off on this wall"),
            ],
            Aim
        );

    private static Reply Aim(Given given)
    {
        var (min, max) = given.Of(LimitGiven);
        if (min > max)
            throw given.Wrong(LimitGiven.Name, "min above max", "the ends in order");
        var aim = HeadlampAim.Of(given.Of(Distance), given.Of(LampHeight), given.Of(CutoffHeight), min, max);
        return new Gives()
            .With("drop", aim.Drop, "mm")
            .With("inclination", aim.Inclination, "%")
            .With("verdict", aim.Call.Word())
            .With("cutoffLowest", aim.CutoffLowest, "mm")
            .With("cutoffHighest", aim.CutoffHighest, "mm");
    }
}
