using Witnessmark.Bench.Jobs;
using Witnessmark.Client.Jobs;

namespace Witnessmark.Client.Today;

/// <summary>Words of the day's list and of an arrival.</summary>
internal static class TodayWords
{
    public static string Title => Say($"Today");
    public static string None => Say($"No job on this device yet.");
    public static string Arrival => Say($"A machine arrives");
    public static string WhichMachine => Say($"Which machine?");
    public static string Purpose => Say($"What is it here for?");
    public static string Promised => Say($"Promised for (if it is)");
    public static string Open => Say($"Open the job");
    public static string AnotherMachine => Say($"Another one: find it in the register");
    public static string Sheet => Say($"By which figure sheet?");
    public static string ChooseSheet => Say($"Choose the figure sheet that judges it.");
    public static string ChooseMachine => Say($"Choose the machine first.");
    public static string ChoosePurpose => Say($"Choose what it is here for.");
    public static string NumberTaken =>
        Say(
            $"Another tab opened a job under this number meanwhile. What a lead gave their word for stands in the plan again: ask for it once more."
        );
    public static string AsSeenLast => Say($"As seen here last. Getting the bench ready.");
    public static string OpensSoon => Say($"It opens as soon as the bench is ready.");
    public static string NotFound => Say($"There is no such page");

    public static string Points(int count) => Say(Sentence.Count(count, $"1 point", $"{count} points"));

    /// <summary>What a job is called in the list.</summary>
    public static string Machine(JobState job) => job.Arrival?.Machine.Name ?? JobWords.Number(job.Job);

    /// <summary>How it stands.</summary>
    public static string State(JobState job) =>
        job.Release is null ? Holds(job.Holds.Count) : JobWords.ReleasedBy(job.Release);

    /// <summary>Its number, what it is here for, and for when it is promised.</summary>
    public static string About(JobState job) =>
        job.Arrival is not { } arrival ? ""
        : JobWords.PromisedWhen(job) is { } when
            ? $"{JobWords.Number(job.Job)} · {JobWords.Purpose(arrival.Purpose)} · {JobWords.Promised(when)}"
        : $"{JobWords.Number(job.Job)} · {JobWords.Purpose(arrival.Purpose)}";

    public static string Holds(int count) =>
        count == 0 ? Say($"ready to go") : Say(Sentence.Count(count, $"1 hold", $"{count} holds"));
}
