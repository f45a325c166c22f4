using Witnessmark.Handbook.Engine;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Tests.Engine;

/// <summary>Invented engines: inlet and exhaust valves, most a little tight, and a shelf of shims.</summary>
public static class RandomEngines
{
    public static (Valve[] Valves, Length[] Stock, ShimSeries Buyable) Of(int seed, int valves, int stock)
    {
        var chance = new Random(seed);
        return (
            [.. Enumerable.Range(0, valves).Select(i => Valve(i, chance))],
            [.. Enumerable.Range(0, stock).Select(_ => Micrometres(1700 + 25 * chance.Next(53)))],
            new ShimSeries(Micrometres(1700), Micrometres(3000), Micrometres(chance.Next(2) == 0 ? 50 : 100))
        );
    }

    private static Valve Valve(int i, Random chance)
    {
        var inlet = i % 2 == 0;
        var min = inlet ? 100 : 170;
        var wide = chance.Next(50, 71);
        return new Valve(
            $"{(inlet ? "I" : "E")}{i / 2 + 1}",
            Micrometres(2200 + 25 * chance.Next(25) + chance.Next(-3, 4)),
            Micrometres(Math.Max(0, min + chance.Next(-90, 80))),
            Micrometres(min),
            Micrometres(min + wide),
            chance.Next(3) == 0 ? Micrometres(min + wide / 3) : null
        );
    }

    private static Length Micrometres(int count) => new(count / 1000.0);
}
