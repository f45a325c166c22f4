using System.Globalization;
using Google.OrTools.Sat;
using Witnessmark.Bench.Day;

namespace Witnessmark.DaySolver;

/// <summary>One run of the solver.</summary>
/// <param name="Plan">The best plan, or null when none was found in the time.</param>
/// <param name="Bound">No plan is below this.</param>
/// <param name="BestAfter">Seconds until the best was found.</param>
internal sealed record Run(DayPlan? Plan, double Bound, double BestAfter)
{
    public static Run Of(DayModel model, double seconds)
    {
        // one search for each core; one of them raises the bound, which the others do little for
        var workers = Math.Clamp(Environment.ProcessorCount, 1, 8);
        var solver = new CpSolver
        {
            StringParameters = string.Create(
                CultureInfo.InvariantCulture,
                $"max_time_in_seconds:{seconds:0.###},num_workers:{workers},random_seed:1,use_objective_lb_search:true"
            ),
        };
        var clock = new Improvements();
        var status = solver.Solve(model.Model, clock);
        return status is CpSolverStatus.Optimal or CpSolverStatus.Feasible
            ? new(model.Read(solver), solver.BestObjectiveBound, clock.Last)
            : new(null, solver.BestObjectiveBound, 0);
    }

    private sealed class Improvements : CpSolverSolutionCallback
    {
        public double Last { get; private set; }

        public override void OnSolutionCallback() => Last = WallTime();
    }
}
