using Google.OrTools.Sat;
using Witnessmark.Handbook.BenchOrder;

namespace Witnessmark.Handbook.Tests.BenchOrder;

/// <summary>
/// The same question put to a general constraint solver (CP-SAT) in another form: every state passes through numbered phases
/// of alternating value, every task lies within one phase of each state it needs.
/// </summary>
public static class OrderBySolver
{
    // A state may change nine times: with five changes a job of 16 tasks came out two minutes longer than it need be.
    private const int Phases = 10;

    /// <summary>The least makespan in whole minutes, or null when there is no order; not proven within the limit is an exception.</summary>
    public static long? Least(BenchState[] states, BenchTask[] tasks, double secondsAllowed = 60, int workers = 1)
    {
        var model = new CpModel();
        var end = Horizon(states, tasks);
        var hands = new List<IntervalVar>();
        var begins = new Dictionary<string, IntVar>();
        var all = model.NewIntVar(0, end, "makespan");
        foreach (var task in tasks)
        {
            var start = model.NewIntVar(0, end, task.Id);
            begins.Add(task.Id, start);
            hands.Add(model.NewFixedSizeIntervalVar(start, Minutes(task.Hands), task.Id));
            model.Add(all >= start + Minutes(task.Hands) + Minutes(task.WaitAfter));
        }
        foreach (var task in tasks)
        foreach (var before in task.After.Select(id => tasks.Single(t => t.Id == id)))
            model.Add(begins[task.Id] >= begins[before.Id] + Minutes(before.Hands) + Minutes(before.WaitAfter));
        var phases = states.ToDictionary(s => s.Name, s => new StatePhases(model, s, end, hands, all));
        foreach (var task in tasks)
        foreach (var (name, value) in task.Needs)
            phases[name].Hold(value, begins[task.Id], begins[task.Id] + Minutes(task.Hands), true, null);
        foreach (var state in states)
        foreach (var (name, value) in state.Requires)
            phases[state.Name].Require(phases[name], value);
        model.AddNoOverlap(hands);
        model.Minimize(all);
        var solver = new CpSolver
        {
            StringParameters = $"max_time_in_seconds:{secondsAllowed},num_workers:{workers},random_seed:1",
        };
        return solver.Solve(model) switch
        {
            CpSolverStatus.Optimal => (long)solver.ObjectiveValue,
            CpSolverStatus.Infeasible => null,
            var other => throw new TimeoutException($"The solver ended with {other}."),
        };
    }

    private static long Minutes(Handbook.Quantities.Duration duration) => (long)Math.Round(duration.Seconds / 60);

    private static long Horizon(BenchState[] states, BenchTask[] tasks) =>
        tasks.Sum(t => Minutes(t.Hands) + Minutes(t.WaitAfter))
        + (tasks.Length + 1)
            * states.Sum(s =>
                Minutes(s.Set) + (s.Clear is { } c ? Minutes(c) : 0) + (s.ClearAfter is { } cool ? Minutes(cool) : 0)
            );

    private sealed class StatePhases
    {
        private readonly CpModel model;
        private readonly BenchState state;

        // Of phase p: whether it exists, when the change into it begins and ends, when the change out of it begins and ends.
        private readonly BoolVar[] exists = new BoolVar[Phases];
        private readonly LinearExpr[] into = new LinearExpr[Phases];
        private readonly LinearExpr[] from = new LinearExpr[Phases];
        private readonly LinearExpr[] until = new LinearExpr[Phases];
        private readonly LinearExpr[] gone = new LinearExpr[Phases];

        public StatePhases(CpModel model, BenchState state, long end, List<IntervalVar> hands, IntVar all)
        {
            this.model = model;
            this.state = state;
            for (var p = 0; p < Phases; p++)
                exists[p] = model.NewBoolVar($"{state.Name} {p}");
            model.Add(exists[0] == 1);
            into[0] = from[0] = LinearExpr.Constant(0);
            for (var p = 1; p < Phases; p++)
                Change(p, end, hands, all);
            until[^1] = LinearExpr.Constant(2 * end);
            gone[^1] = LinearExpr.Constant(end);
            for (var p = 0; p < Phases; p++)
                if (state.Final is { } final && Value(p) != final)
                    if (p + 1 < Phases)
                        model.AddImplication(exists[p], exists[p + 1]);
                    else
                        model.Add(exists[p] == 0);
        }

        private bool Value(int phase) => state.Initial ^ (phase % 2 == 1);

        private void Change(int p, long end, List<IntervalVar> hands, IntVar all)
        {
            var sets = Value(p);
            model.AddImplication(exists[p], exists[p - 1]);
            var start = model.NewIntVar(0, 2 * end, "");
            var takes =
                sets ? Minutes(state.Set)
                : state.Clear is { } clear ? Minutes(clear)
                : 0;
            // A change that does not happen begins beyond the end; what it would have ended lasts to the end.
            model.Add(start == 2 * end).OnlyEnforceIf(exists[p].Not());
            var left = model.NewIntVar(0, 2 * end, "");
            model.Add(left == start + takes).OnlyEnforceIf(exists[p]);
            model.Add(left == end).OnlyEnforceIf(exists[p].Not());
            (until[p - 1], gone[p - 1], into[p], from[p]) = (start, left, start, start + takes);
            model.Add(start >= from[p - 1]).OnlyEnforceIf(exists[p]);
            model.Add(all >= start + takes).OnlyEnforceIf(exists[p]);
            if (sets || takes > 0)
                hands.Add(model.NewOptionalFixedSizeIntervalVar(start, takes, exists[p], ""));
            if (sets)
                return;
            if (state.Clear is null && state.ClearAfter is null)
                model.Add(exists[p] == 0);
            else if (state.ClearAfter is { } cool)
                model.Add(start >= from[p - 1] + Minutes(cool)).OnlyEnforceIf(exists[p]);
        }

        public void Hold(bool value, LinearExpr start, LinearExpr end, bool warms, BoolVar? when)
        {
            var choices = new List<ILiteral>();
            for (var p = 0; p < Phases; p++)
            {
                if (Value(p) != value)
                    continue;
                var here = model.NewBoolVar("");
                choices.Add(here);
                var cool = warms && value && state.ClearAfter is { } after && p + 1 < Phases ? Minutes(after) : 0;
                model.AddImplication(here, exists[p]);
                model.Add(start >= from[p]).OnlyEnforceIf(here);
                if (p + 1 < Phases && cool > 0)
                    model.Add(end + cool <= until[p]).OnlyEnforceIf([here, exists[p + 1]]);
                model.Add(end <= until[p]).OnlyEnforceIf(here);
            }
            if (when is null)
                model.AddExactlyOne(choices);
            else
                model.AddExactlyOne([.. choices, when.Not()]);
        }

        public void Require(StatePhases other, bool value)
        {
            for (var p = 0; p < Phases; p++)
                if (Value(p))
                    other.Hold(value, into[p], gone[p], false, exists[p]);
        }
    }
}
