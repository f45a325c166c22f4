using Witnessmark.Bench.Day;

namespace Witnessmark.Client.Today;

/// <summary>Words of the day's board.</summary>
internal static class DayWords
{
    public const string Title = "Day plan";
    public const string Late = "Late";
    public const string Breaks = "Cannot be worked so";
    public const string Technicians = "Technicians";
    public const string Lifts = "Lifts";
    public const string Key = "Filled: hands on it. Open: it waits by itself. Flag: promised.";
    public const string Nothing = "nothing";
    public const string NoJobs = "No open job has work left.";
    public const string PlanAnew = "Plan anew";
    public const string Planning = "The shop is planning";
    public const string Away =
        "The shop's solver cannot be asked. This is the last plan, with what was changed here since.";
    public const string OwnPlan =
        "No plan of the shop yet: one job after the other by promise, as soon as there is room.";
    public const string NoPlace = "No place in the plan";
    public const string Loosened = "A place by hand could not be kept";
    public const string NotWhole = "Its kit is not whole";
    public const string SayWhen = "Say at the job when the rest arrives, and the plan waits for it.";
    public const string PastPromise = "This moment has passed. Promise a later one.";
    public const string NoSuchJob = "This job is not in the day plan";
    public const string WhoDoes = "Who does it";
    public const string When = "When it begins";
    public const string Soonest = "As soon as there is room";
    public const string PlaceSo = "Place it so";
    public const string LetPlan = "Leave it to the plan";
    public const string Begun = "It has been begun and is not moved.";
    public const string PromisedFor = "Promised for";
    public const string PartsArrive = "Its last parts arrive";
    public const string Save = "Save";
    public const string Same = "Nothing is changed yet.";
    public const string NoMoment = "Choose day and time.";

    public static string Made(DayPlanText from, DateTime today) =>
        $"Planned at {ShopTime.Say(from.Made, today)}{(from.Proven ? "; no plan is better" : "; the best found")}.";

    public static string LateBy(MissedPromise missed) => $"Late by {ShopTime.Length(missed.Minutes)}. {missed.Words}";

    public static string Name(DayJob job) => $"{job.Title} ({job.Id})";

    public static string FromTo(DayQuestion question, Span span) =>
        $"{question.Say(span.From)} to {ShopTime.Say(question.At(span.To), question.At(span.From))}";

    /// <summary>On a list of one day: by the clock alone.</summary>
    public static string OnDay(DayQuestion question, Span span) =>
        $"{ShopTime.Say(question.At(span.From), question.At(span.From))} to {ShopTime.Say(question.At(span.To), question.At(span.From))}";

    public static string Ready(DayQuestion question, DayJob job, PlacedJob at) =>
        $"ready {question.Say(at.Ready(job))}{(job.Promised is { } promised ? $", promised {question.Say(promised)}" : "")}";

    public static string Waits(DayStep step) => step.Waits > 0 ? $", then {ShopTime.Length(step.Waits)} by itself" : "";

    public static string LateCount(int count) => count == 1 ? "1 promise is missed" : $"{count} promises are missed";
}
