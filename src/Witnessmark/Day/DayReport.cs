using Witnessmark.Bench.Day;
using Witnessmark.DaySolver;

namespace Witnessmark.Day;

/// <summary>A solved day on the terminal: the late ones first, then each technician's day, then what is proven.</summary>
internal static class DayReport
{
    public static void Write(TextWriter to, DayQuestion question, SolvedDay solved, IReadOnlyList<NotWhole> notWhole)
    {
        var jobs = question.Jobs.ToDictionary(j => j.Id);
        foreach (var missed in LateReason.Of(question, solved.Plan))
            to.WriteLine(
                $"! {Name(jobs[missed.Job])}: late by {ShopTime.Length(missed.Minutes)}, promised {question.Say(jobs[missed.Job].Promised!.Value)}, ready {question.Say(solved.Plan.Of(missed.Job)!.Ready(jobs[missed.Job]))}. {missed.Words}"
            );
        foreach (var without in solved.Without)
            to.WriteLine($"? {Name(jobs[without.Job])}: no place. {without.Words}");
        foreach (var loosened in solved.Loosened)
            to.WriteLine($"? {Name(jobs[loosened.Job])}: its place by hand could not be kept. {loosened.Words}");
        foreach (var lacking in notWhole)
            to.WriteLine(
                $"? {Name(jobs[lacking.Job])}: its kit is not whole, and nobody has said when it is. {lacking.Words}"
            );
        foreach (var technician in question.Technicians)
            Of(to, question, solved, technician.Name);
        to.WriteLine();
        to.WriteLine($"Lateness: {Proven(solved.Measure.Lateness, solved.LatenessBound)}.");
        to.WriteLine(
            $"Bench time: {Proven(solved.Measure.BenchTime, solved.BenchBound)}; {ShopTime.Length(solved.Measure.Idle)} of it idle."
        );
    }

    private static void Of(TextWriter to, DayQuestion question, SolvedDay solved, string technician)
    {
        to.WriteLine();
        to.WriteLine(technician);
        var steps = question
            .Jobs.Select(j => (Job: j, At: solved.Plan.Of(j.Id)))
            .Where(p => p.At?.Technician == technician)
            .SelectMany(p => p.At!.Starts.Zip(p.Job.Steps, (start, step) => (p.Job, p.At, Start: start, Step: step)))
            .OrderBy(s => s.Start)
            .ToList();
        if (steps.Count == 0)
            to.WriteLine("  nothing");
        foreach (var (job, at, start, step) in steps)
            to.WriteLine(
                $"  {question.Say(start)} to {ShopTime.Say(question.At(start + step.Hands), question.At(start))}  {Name(job)}, {at!.Lift}: {step.What}{(step.Waits > 0 ? $"; then {ShopTime.Length(step.Waits)} by itself" : "")}"
            );
    }

    private static string Name(DayJob job) => job.Title == job.Id ? job.Id : $"{job.Title} ({job.Id})";

    private static string Proven(int found, int bound) =>
        found <= bound
            ? $"{ShopTime.Length(found)}, proven the least"
            : $"{ShopTime.Length(found)}, the best found; proven at least {ShopTime.Length(bound)}";
}
