using Witnessmark.Bench.Day;
using Witnessmark.DaySolver;

namespace Witnessmark.Day;

/// <summary>Asks the solver, which is native and may be missing on a machine that the program was not packed for.</summary>
internal static class DaySolving
{
    /// <summary>The plan, or why there is none.</summary>
    public static (SolvedDay? Solved, Sentence? Why) Solve(DayQuestion question, double seconds)
    {
        try
        {
            return (DaySearch.Solve(question, seconds), null);
        }
        // the library is met in a type's first use, so it may come wrapped
        catch (Exception missing)
            when (missing
                    is DllNotFoundException
                        or TypeInitializationException { InnerException: DllNotFoundException }
            )
        {
            return (
                null,
                $"This program was packed without the solver for this kind of machine: publish it here, or with -p:SolverFor=all."
            );
        }
    }
}
