using Google.OrTools.Sat;
using Witnessmark.Handbook.Engine;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Tests.Engine;

/// <summary>
/// The same question put to a general constraint solver (CP-SAT): a yes-or-no variable for every pair of valve and shim, buying any
/// thickness of the series, and the three aims minimised one after the other.
/// </summary>
public static class ShimsBySolver
{
    /// <summary>The same three of a plan.</summary>
    public static (long Bought, long FourSquares, long Changed)? Aims(ShimPlan plan) =>
        (plan.Bought, (long)Math.Round(4e6 * plan.SquaredDeviation.SquareMillimetres), plan.Changed);

    /// <summary>Bought, four times the squared deviation in µm², changed; null when nothing fits.</summary>
    public static (long Bought, long FourSquares, long Changed)? Least(
        Valve[] valves,
        Length[] stock,
        ShimSeries buyable
    )
    {
        var model = new CpModel();
        var shims = valves.Select(v => v.Shim).Concat(stock).Select(Micrometres).ToArray();
        var series = Series(buyable);
        var uses = shims.Select(_ => new List<ILiteral>()).ToArray();
        var (bought, changed) = (new List<BoolVar>(), new List<BoolVar>());
        var squares = new List<(BoolVar Pair, long Cost)>();
        for (var v = 0; v < valves.Length; v++)
        {
            var pairs = new List<ILiteral>();
            for (var s = 0; s < shims.Length + series.Length; s++)
            {
                var size = s < shims.Length ? shims[s] : series[s - shims.Length];
                var clearance = Micrometres(valves[v].Shim) + Micrometres(valves[v].Clearance) - size;
                if (clearance < Micrometres(valves[v].Min) || clearance > Micrometres(valves[v].Max))
                    continue;
                var pair = model.NewBoolVar("");
                pairs.Add(pair);
                if (s < shims.Length)
                    uses[s].Add(pair);
                else
                    bought.Add(pair);
                if (s != v)
                    changed.Add(pair);
                var off = 2 * clearance - TwiceTarget(valves[v]);
                squares.Add((pair, off * off));
            }
            model.AddExactlyOne(pairs);
        }
        foreach (var use in uses)
            model.AddAtMostOne(use);
        var aims = new[]
        {
            LinearExpr.Sum(bought),
            LinearExpr.WeightedSum(squares.Select(s => s.Pair), squares.Select(s => s.Cost)),
            LinearExpr.Sum(changed),
        };
        var least = new long[3];
        for (var i = 0; i < aims.Length; i++)
        {
            model.Minimize(aims[i]);
            var solver = new CpSolver { StringParameters = "num_workers:1,random_seed:1" };
            var status = solver.Solve(model);
            if (status == CpSolverStatus.Infeasible)
                return null;
            if (status != CpSolverStatus.Optimal)
                throw new TimeoutException($"The solver ended with {status}.");
            least[i] = (long)Math.Round(solver.ObjectiveValue);
            model.Add(aims[i] == least[i]);
        }
        return (least[0], least[1], least[2]);
    }

    private static long[] Series(ShimSeries series)
    {
        var sizes = new List<long>();
        for (var size = Micrometres(series.From); size <= Micrometres(series.To); size += Micrometres(series.Step))
            sizes.Add(size);
        return [.. sizes];
    }

    private static long TwiceTarget(Valve valve) =>
        valve.Target is { } target ? 2 * Micrometres(target) : Micrometres(valve.Min) + Micrometres(valve.Max);

    private static long Micrometres(Length length) => (long)Math.Round(length.Millimetres * 1000);
}
