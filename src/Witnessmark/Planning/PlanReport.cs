using Witnessmark.Bench.Planning.Order;

namespace Witnessmark.Planning;

/// <summary>A plan on the terminal.</summary>
internal static class PlanReport
{
    public static void Write(TextWriter to, PlanOnDisk plan, PlannedOrder order)
    {
        var arrival = plan.Job.Arrival!;
        to.WriteLine($"{arrival.Machine.Name}, {arrival.Machine.Vin} · job {plan.Job.Job} · {arrival.Purpose}");
        to.WriteLine();
        to.WriteLine($"Plan ({plan.Lines.Count}; ! somebody's safety hangs on it, / done)");
        var open = plan.Open.Open.Select(p => p.Id).ToHashSet();
        foreach (var line in plan.Lines)
        {
            to.WriteLine(
                $"  {(!open.Contains(line.Point.Id) ? '/' : line.Point.Safety ? '!' : ' ')} {line.Point.Title}"
            );
            to.WriteLine($"      {line.Why}");
        }
        foreach (var dropped in plan.Job.Dropped)
            to.WriteLine(
                $"  - dropped: {dropped.Point.Title}: {dropped.Why}{(dropped.Lead is { } lead ? $" ({lead})" : "")}"
            );
        KitOf(to, plan);
        Order(to, order);
        to.WriteLine();
        foreach (var sentence in OrderWords.Totals(order))
            to.WriteLine(sentence);
    }

    private static void KitOf(TextWriter to, PlanOnDisk plan)
    {
        to.WriteLine();
        to.WriteLine("Kit");
        var titles = plan.Open.Open.ToDictionary(p => p.Id, p => p.Title);
        foreach (var line in plan.Kit.Lines)
        {
            to.WriteLine($"  {line.Quantity, -10} {line.Item}  ({string.Join(", ", line.For.Select(p => titles[p]))})");
            if (line.Note.Length > 0)
                to.WriteLine($"             {line.Note}");
        }
        foreach (var shortage in plan.Kit.Shortages)
            to.WriteLine($"  - short: {shortage.Item}: {shortage.Why}");
    }

    private static void Order(TextWriter to, PlannedOrder order)
    {
        to.WriteLine();
        to.WriteLine("Order (hours:minutes from now)");
        foreach (var step in order.Plan.Schedule)
            to.WriteLine($"  {OrderWords.Clock(step.Start)}  {OrderWords.Of(step, order)}");
    }
}
