using Witnessmark.Bench.Book;
using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Judging;
using Witnessmark.Bench.Record;
using Witnessmark.Handbook.Measuring;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Visits;

/// <summary>What was read at one point of a machine over its visits, each under the figures of its own job.</summary>
/// <param name="Point">The point.</param>
/// <param name="Figure">The figure of the latest job, or null.</param>
/// <param name="Unit">Unit of values and limit; null when nothing was read.</param>
/// <param name="Limit">As the latest reading was judged, or null.</param>
/// <param name="Readings">In order.</param>
public sealed record PointHistory(
    Point Point,
    Figure? Figure,
    Unit? Unit,
    Limit? Limit,
    IReadOnlyList<PointReading> Readings
)
{
    /// <summary>Whether a point is read as a number that a line over distance can show.</summary>
    public static bool IsDrawn(Point point) =>
        point.Id != MeasuredJudge.Distance
        && point.Reading.Kind
            is ReadingKind.Value
                or ReadingKind.Marks
                or ReadingKind.Sides
                or ReadingKind.Places
                or ReadingKind.Round
                or ReadingKind.Level;

    /// <summary>The history of a point.</summary>
    /// <param name="point">The point.</param>
    /// <param name="visits">Of one machine, oldest first.</param>
    /// <param name="bench">Judges the readings.</param>
    public static PointHistory Of(Point point, IReadOnlyList<Visit> visits, Workbench bench)
    {
        var reader = new Reader(point, bench);
        foreach (var visit in visits)
            reader.Read(visit);
        var (readings, figure) = (reader.Readings, reader.Figure);
        var last = readings.LastOrDefault()?.Opinion;
        return last?.Unit is { } unit
            ? new(point, figure, unit, last.Limit, [.. readings.Select(r => r.In(unit)).OfType<PointReading>()])
            : new(point, figure, null, null, []);
    }

    /// <summary>Goes through the visits and keeps whether work has moved the point since it was read last.</summary>
    private sealed class Reader(Point point, Workbench bench)
    {
        private readonly HashSet<string> moves = [.. point.AgainAfter, point.Id];
        private bool worked;

        public List<PointReading> Readings { get; } = [];

        public Figure? Figure { get; private set; }

        public void Read(Visit visit)
        {
            var kilometres = visit.Kilometres;
            foreach (var (at, entry) in visit.Live)
                if (at == point.Id && entry.Kind == EntryKind.Reading)
                    Take(visit, entry, kilometres);
                else if (moves.Contains(at))
                    worked |=
                        entry.Kind == EntryKind.Correction
                        || bench.Book.Points.GetValueOrDefault(at)?.Reading.IsWork == true;
        }

        private void Take(Visit visit, Entry entry, double? kilometres)
        {
            Figure = point.JudgedBy is { } key
                ? bench.Sheet(visit.Head.Sheet, visit.Head.Revision)?.Figures.GetValueOrDefault(key)
                : null;
            if (Judged(visit, entry) is not { Value: { } value } opinion)
                return;
            Readings.Add(new(entry, visit.Job, Visit.DayOf(entry), kilometres, value, opinion, worked));
            worked = false;
        }

        private Opinion? Judged(Visit visit, Entry entry)
        {
            var machine = visit.Head.Known ?? bench.Workshop.Machines.GetValueOrDefault(visit.Head.Machine);
            if (machine is null || Facts.Of(entry).Fact is not ReadingFact read)
                return null;
            var (instrument, _) = TakenWith.Of(read, bench.Workshop);
            return Judge
                .Reading(new(point, Figure, machine, read.Raw, read.Places, instrument, Visit.DayOf(entry)))
                .Opinion;
        }
    }
}

/// <summary>One reading of a point.</summary>
/// <param name="Entry">The fact.</param>
/// <param name="Job">The job's number.</param>
/// <param name="Day">The day, or null when the clock said nothing readable.</param>
/// <param name="Kilometres">What the odometer showed in that visit, or null.</param>
/// <param name="Value">In the history's unit.</param>
/// <param name="Opinion">The verdict as it was.</param>
/// <param name="AfterWork">Whether work moved the point since the reading before.</param>
public sealed record PointReading(
    Entry Entry,
    string Job,
    DateOnly? Day,
    double? Kilometres,
    double Value,
    Opinion Opinion,
    bool AfterWork
)
{
    /// <summary>One standard deviation in the history's unit; null when there is none to tell.</summary>
    public double? Deviation { get; init; }

    /// <summary>The reading in another unit; null when it measures something else.</summary>
    internal PointReading? In(Unit unit) =>
        Opinion.Unit is not { } own || own.Dimension != unit.Dimension
            ? null
            : this with
            {
                Value = own == unit ? Value : unit.FromBase(own.ToBase(Value)),
                Deviation = Opinion.StandardUncertainty * own.Factor / unit.Factor,
            };
}
