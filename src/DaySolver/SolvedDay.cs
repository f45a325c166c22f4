using Witnessmark.Bench.Day;

namespace Witnessmark.DaySolver;

/// <summary>A day plan with what is proven of it.</summary>
/// <param name="Plan">The best plan found.</param>
/// <param name="Measure">What it measures.</param>
/// <param name="LatenessBound">No plan has less lateness; equal to the plan's: proven the least.</param>
/// <param name="BenchBound">No plan with as little lateness as this one has less bench time.</param>
/// <param name="Without">Jobs that no plan has a place for, with the reason.</param>
/// <param name="Loosened">Places by hand that could not all be kept.</param>
/// <param name="Seconds">How long it was searched for.</param>
/// <param name="BestAfter">After how many seconds the best plan was found.</param>
public sealed record SolvedDay(
    DayPlan Plan,
    DayMeasure Measure,
    int LatenessBound,
    int BenchBound,
    IReadOnlyList<NoPlace> Without,
    IReadOnlyList<Breach> Loosened,
    double Seconds,
    double BestAfter
)
{
    /// <summary>Whether no plan can be better in lateness, nor then in bench time.</summary>
    public bool Proven => LatenessBound >= Measure.Lateness && BenchBound >= Measure.BenchTime;
}
