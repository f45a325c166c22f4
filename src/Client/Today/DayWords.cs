using Witnessmark.Bench.Day;

namespace Witnessmark.Client.Today;

/// <summary>Words of the day's board.</summary>
internal static class DayWords
{
    public static string Title => Say($"Day plan");
    public static string Late => Say($"Late");
    public static string Breaks => Say($"Cannot be worked so");
    public static string Technicians => Say($"Technicians");
    public static string Lifts => Say($"Lifts");
    public static string Key => Say($"Filled: hands on it. Open: it waits by itself. Flag: promised.");
    public static string Nothing => Say($"nothing");
    public static string NoJobs => Say($"No open job has work left.");
    public static string PlanAnew => Say($"Plan anew");
    public static string Planning => Say($"The shop is planning");
    public static string Away =>
        Say($"The shop's solver cannot be asked. This is the last plan, with what was changed here since.");
    public static string OwnPlan =>
        Say($"No plan of the shop yet: one job after the other by promise, as soon as there is room.");
    public static string NoPlace => Say($"No place in the plan");
    public static string Loosened => Say($"A place by hand could not be kept");
    public static string NotWhole => Say($"Its kit is not whole");
    public static string SayWhen => Say($"Say at the job when the rest arrives, and the plan waits for it.");
    public static string PastPromise => Say($"This moment has passed. Promise a later one.");
    public static string NoSuchJob => Say($"This job is not in the day plan");
    public static string WhoDoes => Say($"Who does it");
    public static string When => Say($"When it begins");
    public static string Soonest => Say($"As soon as there is room");
    public static string PlaceSo => Say($"Place it so");
    public static string LetPlan => Say($"Leave it to the plan");
    public static string Begun => Say($"It has been begun and is not moved.");
    public static string PromisedFor => Say($"Promised for");
    public static string PartsArrive => Say($"Its last parts arrive");
    public static string Save => Say($"Save");
    public static string Same => Say($"Nothing is changed yet.");
    public static string NoMoment => Say($"Choose day and time.");

    public static string Made(DayPlanText from, DateTime today) =>
        Say(
            $"Planned at {ShopTime.Say(from.Made, today)}{(from.Proven ? Say($"; no plan is better") : Say($"; the best found"))}."
        );

    public static string LateBy(MissedPromise missed) =>
        Say($"Late by {ShopTime.Length(missed.Minutes)}. {missed.Words}");

    public static string Name(DayJob job) => $"{job.Title} ({job.Id})";

    public static string FromTo(DayQuestion question, Span span) =>
        Say($"{question.Say(span.From)} to {ShopTime.Say(question.At(span.To), question.At(span.From))}");

    /// <summary>On a list of one day: by the clock alone.</summary>
    public static string OnDay(DayQuestion question, Span span) =>
        Say(
            $"{ShopTime.Say(question.At(span.From), question.At(span.From))} to {ShopTime.Say(question.At(span.To), question.At(span.From))}"
        );

    public static string Ready(DayQuestion question, DayJob job, PlacedJob at) =>
        Say(
            $"ready {question.Say(at.Ready(job))}{(job.Promised is { } promised ? Say($", promised {question.Say(promised)}") : "")}"
        );

    public static string Waits(DayStep step) =>
        step.Waits > 0 ? Say($", then {ShopTime.Length(step.Waits)} by itself") : "";

    public static string Shift(int by) =>
        by < 0 ? Say($"{ShopTime.Length(-by)} earlier") : Say($"{ShopTime.Length(by)} later");

    public static string Day(DateTime day) => Say(Sentence.Day(DayForm.Week, DateOnly.FromDateTime(day)));

    public static string LateCount(int count) =>
        Say(Sentence.Count(count, $"1 promise is missed", $"{count} promises are missed"));
}
