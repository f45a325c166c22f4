using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Judging;
using Witnessmark.Bench.Wording;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Expectations;

/// <summary>Distances as the machine's own odometer shows them.</summary>
public static class Distances
{
    /// <summary>The unit that the odometer was read in; kilometres where it was not read.</summary>
    public static Unit UnitIn(JobState job) =>
        job.Points.FirstOrDefault(p => p.Point.Id == MeasuredJudge.Distance)?.Current is { Raw: [var raw, ..] }
        && Written.Read(raw, out var read) is null
        && read.Unit.Dimension == Dimension.Length
            ? read.Unit
            : UnitTable.Named("km");

    /// <summary>Kilometres in that unit, whole: <c>22380 km</c>, <c>13906 mi</c>.</summary>
    public static Sentence Shown(double kilometres, Unit odometer) =>
        Numerals.With(odometer.FromBase(UnitTable.Named("km").ToBase(kilometres)), odometer, 0);
}
