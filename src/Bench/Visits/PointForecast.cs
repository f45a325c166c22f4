using Witnessmark.Bench.Machines;
using Witnessmark.Handbook;
using Witnessmark.Handbook.Quantities;
using Witnessmark.Handbook.Wear;

namespace Witnessmark.Bench.Visits;

/// <summary>How far a point still goes until its limit, by this machine's readings and the wear of like machines, or why nobody can say.</summary>
/// <remarks>
/// By <see cref="WearForecast"/> and <see cref="DateForecast"/> of the handbook. Of the start nothing is known beforehand: its prior is so
/// wide, one metre, that it says nothing. The rate's prior is that of <see cref="FleetRate"/>, and just as wide without like machines.
/// </remarks>
/// <param name="Run">The readings that it rests on; empty when there are none.</param>
/// <param name="Words">What is to be expected, or why not.</param>
/// <param name="Cautions">Why it is less sure than it looks.</param>
/// <param name="Fan">For drawing; null when there is none.</param>
public sealed record PointForecast(
    IReadOnlyList<PointReading> Run,
    Sentence Words,
    IReadOnlyList<Sentence> Cautions,
    WearFan? Fan
)
{
    /// <summary>Whose wear it rests on; empty when nothing is forecast here.</summary>
    public Sentence Basis { get; private init; } = Sentence.Empty;

    /// <summary>Whether it says how far, rather than why nobody can.</summary>
    public bool Tells { get; init; }

    private const double MillimetresInKilometre = 1e6;
    private const int FanLevels = 12;
    private const int FewReadings = 2;

    private static readonly Length Anything = new(1000);

    /// <summary>The forecast of a point's history.</summary>
    /// <param name="history">What was read.</param>
    /// <param name="distances">What the odometer showed, by day; the last one is now.</param>
    /// <param name="fleet">How like machines wear, or null.</param>
    public static PointForecast Of(PointHistory history, IReadOnlyList<DistanceSeen> distances, FleetRate? fleet = null)
    {
        var (run, why) = WearRun.Of(history, fleet);
        return run is null
            ? new([], why!, [], null)
            : new Asked(run, distances, fleet).Answer() with
            {
                Basis = fleet is null
                    ? (Sentence)$"From this machine alone."
                    : (Sentence)$"With the wear of {fleet.Machines} other machines.",
            };
    }

    private static Length Kilometres(double kilometres) => new(kilometres * MillimetresInKilometre);

    private sealed class Asked
    {
        private readonly WearRun run;
        private readonly IReadOnlyList<DistanceSeen> distances;
        private readonly FleetRate? fleet;
        private readonly WearReading[] readings;
        private readonly Length deviation;
        private readonly double start;
        private readonly double now;

        public Asked(WearRun run, IReadOnlyList<DistanceSeen> distances, FleetRate? fleet)
        {
            (this.run, this.distances, this.fleet) = (run, SinceBreak(distances), fleet);
            start = run.Readings[0].Kilometres!.Value;
            var shown = this.distances.Count > 0 ? this.distances[^1].Distance.Kilometres : 0;
            now = Math.Max(run.Readings.Max(r => r.Kilometres!.Value), shown);
            deviation = new(run.Unit.Factor * run.Readings.Max(r => r.Deviation!.Value));
            readings =
            [
                .. run.Readings.Select(r => new WearReading(
                    Kilometres(r.Kilometres!.Value - start),
                    run.Room(r.Value)
                )),
            ];
        }

        public PointForecast Answer()
        {
            if (readings.Length < FewReadings && fleet is null)
                return new(
                    run.Readings,
                    $"One reading: how fast it wears is seen after the next one.",
                    Cautions(null),
                    null
                );
            var answer = At(new Length(0));
            var outlook = answer.Value!;
            return answer.Refusal is { } refusal
                ? new(run.Readings, $"Cannot predict. {refusal.Because}", Cautions(outlook), null)
                : new(run.Readings, Words(outlook), Cautions(outlook), FanOf(outlook)) { Tells = true };
        }

        private Answer<WearOutlook> At(Length room)
        {
            var here = Kilometres(now - start);
            return WearForecast.For(readings, deviation, Prior, new WearQuestion(room, here, here));
        }

        private FleetWear Prior =>
            fleet is null
                ? new(readings[0].Value, new(0), Anything, Anything)
                : new(readings[0].Value, new(run.Falls ? -fleet.Mean : fleet.Mean), Anything, new(fleet.Deviation));

        private Sentence Words(WearOutlook outlook)
        {
            if (outlook.Median!.Value.Millimetres <= 0)
                return $"By the line through its readings the limit is reached: read it again.";
            Sentence left = $"About {VisitWords.Rough(outlook.Median.Value)} to the limit";
            Sentence band =
                $"between {VisitWords.Rough(Ahead(outlook.Earliest))} and {VisitWords.Rough(outlook.Latest!.Value)} nine times in ten";
            return $"{left}; {band}. {Date(outlook)}";
        }

        private Sentence Date(WearOutlook outlook)
        {
            if (distances.Count == 0)
                return $"When that is cannot be told: no distance has its day.";
            var first = distances[0].Distance.Day;
            OdometerDay[] days =
            [
                .. distances
                    .GroupBy(d => d.Distance.Day)
                    .Select(g => new OdometerDay(
                        g.Key.DayNumber - first.DayNumber,
                        Kilometres(g.Max(d => d.Distance.Kilometres))
                    )),
            ];
            var spread = (outlook.Latest!.Value - Ahead(outlook.Earliest)) / (2 * NineInTen);
            var answer = DateForecast.For(
                days,
                new DistanceLeft(outlook.Median!.Value, spread),
                null,
                DateForecast.UsualScatter,
                []
            );
            return answer.Refusal is { } refusal
                ? (Sentence)$"When that is cannot be told. {refusal.Because}"
                : On(distances[^1].Distance.Day, answer.Certain);
        }

        private static Sentence On(DateOnly today, DateOutlook outlook)
        {
            const double tenYears = 3652;
            Sentence caution = outlook.Caution is { } why ? (Sentence)$" {why}" : Sentence.Empty;
            return outlook.Median > tenYears
                ? (Sentence)$"Ridden as so far, not within ten years.{caution}"
                : (Sentence)
                    $"Ridden as so far, about {VisitWords.Month(today.AddDays((int)outlook.Median!.Value))}; one time in ten by {VisitWords.Month(today.AddDays((int)outlook.Early!.Value))}.{caution}";
        }

        private List<Sentence> Cautions(WearOutlook? outlook)
        {
            List<Sentence> cautions = [];
            if (run.Began is { } began)
                cautions.Add(began);
            if (readings.Length < FewReadings && fleet is not null)
                cautions.Add($"One reading: how fast it wears is known from the other machines alone.");
            if (readings.Length == FewReadings)
                cautions.Add($"Two readings: whether it wears along a straight line nobody can see yet.");
            if (outlook?.Agrees == false)
                cautions.Add(
                    fleet is null
                        ? (Sentence)
                            $"The readings lie further from a straight line than their instrument explains: take it as rough."
                        : (Sentence)
                            $"The readings, a straight line and the other machines do not agree: take it as rough."
                );
            return cautions;
        }

        private WearFan? FanOf(WearOutlook outlook)
        {
            var room = outlook.Start - outlook.Rate * ((now - start) / 1000);
            if (room.Millimetres <= 0)
                return null;
            List<FanLevel> levels = [];
            for (var i = 0; i <= FanLevels; i++)
            {
                var level = room * (1 - (double)i / FanLevels);
                var passes = At(level).Certain;
                levels.Add(
                    new(
                        run.Value(level),
                        On(Ahead(passes.Earliest)),
                        On(passes.Median!.Value),
                        On(passes.Latest!.Value)
                    )
                );
            }
            return new(now, levels);
        }

        private double On(Length ahead) => now + ahead.Millimetres / MillimetresInKilometre;

        /// <summary>Never behind: what may lie behind begins here.</summary>
        private static Length Ahead(Length? distance) => new(Math.Max(0, distance?.Millimetres ?? 0));

        private static List<DistanceSeen> SinceBreak(IReadOnlyList<DistanceSeen> distances) =>
            [.. distances.Skip(Math.Max(0, distances.ToList().FindLastIndex(d => d.Mark == DistanceMark.WentBack)))];
    }

    /// <summary>Standard deviations from the middle to each end of nine in ten: Φ⁻¹(0.95), from memory.</summary>
    private const double NineInTen = 1.6449;
}

/// <summary>Where the line through the readings, and nine in ten lines beside it, pass each value on the way to the limit.</summary>
/// <param name="From">Where it begins: what the odometer shows now, in km.</param>
/// <param name="Levels">From the value now to the limit.</param>
public sealed record WearFan(double From, IReadOnlyList<FanLevel> Levels);

/// <summary>One value on the way, and where it is passed, in km on the odometer.</summary>
/// <param name="Value">In the history's unit.</param>
/// <param name="Earliest">One in twenty has passed it here.</param>
/// <param name="Median">As likely before as after.</param>
/// <param name="Latest">Nineteen in twenty have passed it here.</param>
public readonly record struct FanLevel(double Value, double Earliest, double Median, double Latest);
