using Witnessmark.Bench.Book;
using Witnessmark.Handbook.Fluids;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Corrections;

/// <summary>The drained engine of this machine, from the sheet's capacities and the workshop's parameters.</summary>
/// <param name="Drained">What it takes.</param>
/// <param name="BetweenMarks">Volume between the marks.</param>
/// <param name="TargetLevel">Aim between the marks, 0 to 1.</param>
/// <param name="Risk">Risk of overfilling that is taken.</param>
internal sealed record Sump(DrainedSump Drained, Volume BetweenMarks, double TargetLevel, double Risk)
{
    /// <summary>One standard deviation of the volume to the high mark.</summary>
    public double Deviation =>
        Math.Sqrt(Math.Pow(Drained.CapacityDeviation.Litres, 2) + Math.Pow(Drained.RetainedDeviation.Litres, 2));

    /// <summary>Null when a figure or a parameter is missing.</summary>
    public static Sump? Of(Situation situation, Point fill)
    {
        if (
            situation.Amount("oil.capacity") is not { } capacity
            || situation.Amount("oil.filter-volume") is not { } filter
            || situation.Amount("oil.between-marks") is not { } marks
            || fill.Quantity<Volume>("capacity-deviation") is not { } capacityDeviation
            || fill.Quantity<Volume>("retained") is not { } retained
            || fill.Quantity<Volume>("retained-deviation") is not { } retainedDeviation
            || fill.Truth("filter-replaced") is not { } replaced
            || fill.Number("target-level") is not { } target
            || fill.Number("overfill-risk") is not { } risk
        )
            return null;
        return new(
            new(capacity, capacityDeviation, filter, replaced, retained, retainedDeviation),
            marks,
            target,
            risk
        );
    }

    /// <summary>The point where this engine is filled, if the job's book has one.</summary>
    public static Point? FillPoint(BenchBook book) =>
        book.Points.Values.FirstOrDefault(p => p.CorrectedBy == "oil-first-fill");
}
