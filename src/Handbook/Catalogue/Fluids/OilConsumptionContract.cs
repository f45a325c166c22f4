using Witnessmark.Handbook.Fluids;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The contract of <c>oil-consumption</c>.</summary>
internal static class OilConsumptionContract
{
    private static readonly Input<Volume[]> Added = Take.List(
        Take.Quantity<Volume>("added", "every portion poured in between"),
        0
    );
    private static readonly Input<double> LevelStart = Take.Number(
        "levelStart",
        "level at the beginning: 0 low mark, 1 high mark; below and above too"
    );
    private static readonly Input<double> LevelEnd = Take.Number("levelEnd", "level at the end");
    private static readonly Input<Volume> BetweenMarks = Take.Positive<Volume>(
        "betweenMarks",
        "from the low to the high mark"
    );
    private static readonly Input<Length> Distance = Take.Positive<Length>("distance", "driven between the readings");
    private static readonly Input<double> LevelDeviation = Take.Number(
        "levelDeviation",
        "one standard deviation of a level",
        0
    );
    private static readonly Input<Volume> AddedDeviation = Take.Quantity<Volume>(
        "addedDeviation",
        "one standard deviation of a portion"
    );

    public static Calculation Calculation { get; } =
        new(
            "oil-consumption",
            "Fluids",
            "Oil used per 1000 km, and whether the readings prove it.",
            "own derivation; JCGM 100:2008, 5.1.2, and JCGM 106:2012, 8.3",
            typeof(OilConsumption),
            [Added, LevelStart, LevelEnd, BetweenMarks, Distance, LevelDeviation, AddedDeviation],
            [
                new("perThousandKilometres", "L", "negative when the level rose by more than was added"),
                new("deviation", "L", "one standard deviation of it"),
                new("real", "true or false", "whether the readings prove a consumption, 95 %"),
                new("note", "text", "only when they prove the opposite: what a rising level may mean"),
            ],
            Balance
        );

    private static Reply Balance(Given given)
    {
        var use = OilConsumption.Of(
            given.Of(Added),
            new(given.Of(LevelStart), given.Of(LevelDeviation)),
            given.Of(LevelEnd),
            given.Of(BetweenMarks),
            given.Of(Distance),
            given.Of(AddedDeviation)
        );
        return new Gives()
            .With("perThousandKilometres", use.PerThousandKilometres, "L")
            .With("deviation", use.Deviation, "L")
            .With("real", use.Balance == OilBalance.Used)
            .With("note", use.Balance == OilBalance.Gained ? Rising : null);
    }

    private const string Rising =
        "The engine holds more than before: fuel or water in the oil, an addition that nobody noted, or two readings taken differently. Find out which before it runs on.";
}
