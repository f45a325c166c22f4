using Witnessmark.Bench.Book;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Record;

namespace Witnessmark.Bench.AtThePoint;

/// <summary>The chain of the invented machine, for somebody who has none at hand: what a rule beside it would show.</summary>
/// <remarks>
/// <para><b>Formula.</b> S² = S₀² − c·n, the law by which the chain's correction learns; S₀ and n are what was read and turned.</para>
/// <para><b>Source.</b> docs/handbook/chain-adjustment.md; c and the first marks are invented with the machine.</para>
/// </remarks>
public static class InventedChain
{
    /// <summary>The point that it hangs at.</summary>
    public const string Point = "chain-slack";

    private const double Lowest = 75; // mm on the rule, before anybody turned
    private const double Highest = 25;
    private const double PerTurn = 1050; // mm²
    private const double Least = 1; // mm: what is less is a taut chain

    /// <summary>Lowest and highest mark as the rule would show them now; null where there is nothing to read, or the chain is taut.</summary>
    public static (int Lowest, int Highest)? Marks(PointState point)
    {
        if (point.Point.Id != Point || point.Point.Reading.Kind != ReadingKind.Marks)
            return null;
        var middle = (Lowest + Highest) / 2;
        var slack = Slack(point);
        return slack < Least ? null : ((int)Math.Round(middle + slack / 2), (int)Math.Round(middle - slack / 2));
    }

    private static double Slack(PointState point)
    {
        var (from, since) = point.Readings is [.., { Opinion.Value: { } read } last]
            ? (read, point.Corrections.Where(c => !CausalOrder.Saw(last.Entry, c.Entry)))
            : (Lowest - Highest, point.Corrections);
        var square = from * from - PerTurn * since.Sum(c => c.Left ?? 0);
        return square > 0 ? Math.Sqrt(square) : 0;
    }
}
