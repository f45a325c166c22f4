using Witnessmark.Handbook.BenchOrder;

namespace Witnessmark.Handbook.Tests.BenchOrder;

/// <summary>
/// The relaxation behind the bound, against its closed form: the preemptive schedule is over at the largest, over all sets of jobs, of least head +
/// all lengths + least tail (J. Carlier, The one-machine sequencing problem, European Journal of Operational Research 11, 1982,
/// pp. 42–47: from memory).
/// </summary>
public class OneMachineTests
{
    [Fact]
    public void Jobs_that_may_be_interrupted_are_over_when_the_closed_form_says()
    {
        for (var seed = 0; seed < 600; seed++)
        {
            var chance = new Random(seed);
            var from = chance.Next(2) * chance.Next(1, 30);
            var jobs = Enumerable
                .Range(0, chance.Next(1, 7))
                .Select(_ => (Head: from + Some(chance), Length: Some(chance), Tail: Some(chance)))
                .ToArray();
            var machine = new OneMachine(jobs.Length);
            machine.Add(99, 99, 99);
            machine.Clear();
            foreach (var (head, length, tail) in jobs)
                machine.Add(head, length, tail);
            Assert.True(
                Closed(jobs, from) == machine.Makespan(from),
                $"seed {seed}: {string.Join(" ", jobs)} from {from}: {Closed(jobs, from)} expected"
            );
        }
    }

    // a third of all times are nothing: a change of state without hands, a task without a wait
    private static double Some(Random chance) => chance.Next(3) == 0 ? 0 : chance.Next(1, 20);

    private static double Closed((double Head, double Length, double Tail)[] jobs, double from) =>
        Enumerable
            .Range(1, (1 << jobs.Length) - 1)
            .Select(set => jobs.Where((_, i) => (set >> i & 1) != 0).ToArray())
            .Max(set => Math.Max(from, set.Min(j => j.Head) + set.Sum(j => j.Length) + set.Min(j => j.Tail)));
}
