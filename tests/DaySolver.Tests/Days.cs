using Witnessmark.Bench.Day;

namespace Witnessmark.DaySolver.Tests;

/// <summary>Invented days: small by hand, large by chance with a seed.</summary>
public static class Days
{
    /// <summary>A Thursday, so that the next day is open and the one after it is not.</summary>
    public static readonly DateTime Thursday = new(2026, 11, 26);

    public static int At(int hour, int minute = 0, int day = 0) => day * 1440 + hour * 60 + minute;

    /// <summary>Open on Thursday and Friday from 8 to 12 and from 13 to 17, then from Monday on.</summary>
    public static IReadOnlyList<Span> Open { get; } =
    [
        .. new[] { 0, 1, 4, 5, 6, 7, 8, 11, 12 }.SelectMany(day =>
            (Span[])[new(At(8, 0, day), At(12, 0, day)), new(At(13, 0, day), At(17, 0, day))]
        ),
    ];

    public static DayTechnician Ines { get; } = new("Ines", null, Open);

    public static DayTechnician Bram { get; } = new("Bram", ["brakes"], Open);

    public static DayQuestion Of(params DayJob[] jobs) => new(Thursday, At(8), Open, [Ines], ["Lift 1"], jobs);

    public static DayJob Job(string id, int hands, int? promised = null, int waits = 0) =>
        new(id, $"Machine {id}", [new($"work {id}", hands, waits)], promised);

    /// <summary>A shop with so many jobs; some promised too early, some whose parts come, some begun.</summary>
    public static DayQuestion Random(int seed, int jobs, int technicians, int lifts)
    {
        var chance = new Random(seed);
        string[] skills = ["brakes", "engine", "tyres"];
        var people = Enumerable
            .Range(0, technicians)
            .Select(i => new DayTechnician(
                $"T{i}",
                i == 0 ? null : [.. skills.Where(_ => chance.Next(3) > 0)],
                i % 3 == 2 ? [.. Open.Where(o => o.From % 1440 < 720)] : Open
            ))
            .ToList();
        var taken = 0;
        return new(
            Thursday,
            At(8, 30),
            Open,
            people,
            [.. Enumerable.Range(1, lifts).Select(i => $"Lift {i}")],
            [.. Enumerable.Range(0, jobs).Select(i => RandomJob(chance, i, skills, people, lifts, ref taken))]
        );
    }

    private static DayJob RandomJob(
        Random chance,
        int i,
        string[] skills,
        List<DayTechnician> people,
        int lifts,
        ref int taken
    )
    {
        var steps = Enumerable
            .Range(0, chance.Next(1, 4))
            .Select(s => new DayStep(
                $"step {s}",
                5 * chance.Next(3, 19),
                chance.Next(3) == 0 ? 5 * chance.Next(2, 13) : 0
            ))
            .ToList();
        var job = new DayJob(
            $"{400 + i}",
            $"Machine {i}",
            steps,
            chance.Next(5) == 0 ? null : At(8, 30, chance.Next(2)) + 15 * chance.Next(4, 34),
            chance.Next(4) == 0 ? At(8, 0) + 15 * chance.Next(0, 24) : null,
            chance.Next(3) == 0 ? [skills[chance.Next(skills.Length)]] : []
        );
        if (taken >= Math.Min(lifts, people.Count) || chance.Next(6) > 0)
            return job;
        taken++;
        return job with
        {
            Parts = null,
            Skills = [],
            Held = new(people[taken - 1].Name, At(8, 30) - 5 * chance.Next(0, 6), $"Lift {taken}", Begun: true),
        };
    }
}
