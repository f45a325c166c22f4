using Witnessmark.Handbook.BenchOrder;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Tests.BenchOrder;

/// <summary>Invented jobs like those at a bench: stand, fairing, wheel (on the stand only), warm engine, and tasks that need them.</summary>
public static class RandomOrders
{
    public static (BenchState[] States, BenchTask[] Tasks) Of(int seed, int tasks, int states = 4)
    {
        var chance = new Random(seed);
        var names = new[] { "stand", "wheel", "engine", "fairing", "tank", "seat" }[..states];
        return (
            [.. names.Select(name => State(name, chance))],
            [.. Enumerable.Range(0, tasks).Select(i => Task(i, names, chance))]
        );
    }

    private static BenchState State(string name, Random chance)
    {
        var initial = chance.Next(3) == 0 && name != "wheel" && name != "seat";
        var cools = name == "engine";
        return new BenchState(name, initial, Minutes(chance.Next(1, 12)))
        {
            Final =
                cools || chance.Next(4) == 0 ? null
                : name == "wheel" ? false
                : chance.Next(4) == 0,
            Clear =
                cools && chance.Next(3) != 0 ? null
                : name == "seat" && chance.Next(2) == 0 ? null
                : name == "fairing" && chance.Next(5) == 0 ? null
                : Minutes(chance.Next(0, 15)),
            ClearAfter = cools ? Minutes(chance.Next(5, 120)) : null,
            Requires =
                name == "wheel" ? new Dictionary<string, bool> { ["stand"] = true }
                : name is "tank" or "fairing" && chance.Next(4) == 0
                    ? new Dictionary<string, bool> { ["engine"] = false }
                : [],
        };
    }

    private static BenchTask Task(int i, string[] names, Random chance)
    {
        var after = Enumerable.Range(0, i).Where(_ => chance.Next(i + 2) < 2).Take(2).Select(j => $"t{j}");
        var needs = names.Where(_ => chance.Next(5) < 2).ToDictionary(n => n, _ => chance.Next(3) != 0);
        if (needs.TryGetValue("wheel", out var off) && off)
            needs.Remove("stand");
        return new BenchTask(
            $"t{i}",
            Minutes(chance.Next(0, 25)),
            Minutes(chance.Next(3) == 0 ? chance.Next(5, 60) : 0),
            [.. after],
            needs
        );
    }

    private static Duration Minutes(int minutes) => new(60 * minutes);
}
