using System.Globalization;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Judging;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Planning;

/// <summary>What one visit of a machine says to the plan of the next.</summary>
/// <param name="Machine">Id of the machine.</param>
/// <param name="Sheet">Id of its sheet: like machines share it.</param>
/// <param name="Day">The day of its arrival.</param>
/// <param name="Kilometres">What the odometer showed; null when it was not read.</param>
/// <param name="Points">What was read, done, left, dropped or noted.</param>
public sealed record PastVisit(
    string Machine,
    string Sheet,
    DateOnly Day,
    double? Kilometres,
    IReadOnlyList<VisitedPoint> Points
)
{
    private const string DistancePoint = "distance";

    /// <summary>Of a job; null when it was never opened or its day cannot be read.</summary>
    public static PastVisit? Of(JobState job) =>
        job.Arrival is { } arrival && DayOf(arrival.At) is { } day
            ? new(
                arrival.Machine.Id,
                arrival.Sheet.Id,
                day,
                KilometresIn(job),
                [
                    .. job.Points.Select(VisitedPoint.Of),
                    .. job.Dropped.Select(d => new VisitedPoint(d.Point.Id) { Dropped = d.Why }),
                ]
            )
            : null;

    /// <summary>The day that an entry was written on, by its device's clock.</summary>
    public static DateOnly? DayOf(string at) =>
        at.Length >= 10
        && DateOnly.TryParseExact(at.AsSpan(0, 10), "yyyy-MM-dd", CultureInfo.InvariantCulture, default, out var day)
            ? day
            : null;

    private static double? KilometresIn(JobState job) =>
        job.Points.FirstOrDefault(p => p.Point.Id == DistancePoint)?.Readings is { Count: > 0 } readings
        && readings[^1].Raw.Count > 0
            ? RawValue.In(readings[^1].Raw[0], UnitTable.Named("km"), out _)
            : null;
}

/// <summary>One point of a visit.</summary>
/// <param name="Point">Its id.</param>
public sealed record VisitedPoint(string Point)
{
    /// <summary>The last verdict; unread when nothing was read.</summary>
    public VerdictWord Verdict { get; init; }

    /// <summary>The last reading as people say it; null when nothing was read.</summary>
    public Sentence? Shown { get; init; }

    /// <summary>The last reading with its standard uncertainty, in <see cref="Unit"/>.</summary>
    public (double Value, double Uncertainty)? Measured { get; init; }

    /// <summary>Unit of what was measured.</summary>
    public Unit? Unit { get; init; }

    /// <summary>Whether a correction was made.</summary>
    public bool Corrected { get; init; }

    /// <summary>Whether it was marked.</summary>
    public bool Marked { get; init; }

    /// <summary>Why it was left as it is; null when it was not.</summary>
    public string? Left { get; init; }

    /// <summary>Why it was dropped from the plan; null when it was not.</summary>
    public string? Dropped { get; init; }

    /// <summary>What was noted on it.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];

    internal static VisitedPoint Of(PointState state)
    {
        var last = state.Readings.Count > 0 ? state.Readings[^1].Opinion : null;
        return new(state.Point.Id)
        {
            Verdict = last?.Verdict ?? VerdictWord.Unread,
            Shown = last?.Shown,
            Measured = last is { Value: { } value, StandardUncertainty: { } deviation } ? (value, deviation) : null,
            Unit = last?.Unit,
            Corrected = state.Corrections.Count > 0,
            Marked = state.Marked is not null,
            Left = state.Left?.Why,
            Notes = [.. state.Notes.Select(n => n.Text)],
        };
    }
}
