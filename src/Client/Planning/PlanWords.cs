using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Planning;

namespace Witnessmark.Client.Planning;

/// <summary>Words of plan and bench order.</summary>
internal static class PlanWords
{
    public static string Title => Say($"Plan");
    public static string ToPlan => Say($"Plan: add or drop");
    public static string Order => Say($"Bench order");
    public static string Searching => Say($"Looking for a better order. Until then the one before stands.");
    public static string First => Say($"Looking for the order that takes the least time.");
    public static string Steps => Say($"All steps with their times");
    public static string Free => Say($"Another order is yours to choose, except where one point has to come first.");
    public static string Asked => Say($"Asked for besides");
    public static string AskedWhy =>
        Say($"What is asked for and is not in this job: take it in, or leave it with a reason.");
    public static string InPlan => Say($"In the plan");
    public static string DroppedTitle => Say($"Dropped");
    public static string Add => Say($"Add a point");
    public static string TakeIn => Say($"Take in");
    public static string Drop => Say($"Drop");
    public static string Back => Say($"Take back in");
    public static string Cancel => Say($"Cancel");
    public static string Find => Say($"Which point?");
    public static string FindHint => Say($"chain, pads, coolant …");
    public static string Why => Say($"Why?");
    public static string AddedWhy => Say($"Why is it done today?");
    public static string Lead => Say($"Somebody's safety hangs on it. Which lead stands for that?");
    public static string NoLeads =>
        Say($"Somebody's safety hangs on it, and shop.toml names no leads: it stays in the plan.");
    public static string ReasonMissing => Say($"A reason is needed.");
    public static string LeadMissing => Say($"A reason and a lead's name are needed.");
    public static string PointMissing => Say($"Choose the point and say why.");
    public static string Safety => Say($"safety");

    /// <summary>Offered to be tapped instead of typed.</summary>
    public static IReadOnlyList<string> Reasons =>
        [Say($"Done elsewhere, seen on paper"), Say($"The owner does not want it"), Say($"Next visit")];

    public static string Points(int count) => Say(Sentence.Count(count, $"1 point", $"{count} points"));

    public static string PastPromise(string words) =>
        Say($"\"{words}\" lies in the past. Promise a day that comes, or leave it empty.");

    public static string ComesFirst(IEnumerable<PointState> first) =>
        Say($"First, because the order is safety: {Sentence.List(first.Select(p => p.Point.Title))}.");

    public static string Dropped(string why, string by, string? lead) =>
        lead is null ? $"{why} ({by})" : Say($"{why} ({by}; {lead} stands for it)");

    /// <summary>The book's reason is known; what else asks for a point is worth a look.</summary>
    public static bool IsSpecial(PlanLine line) =>
        line.Reasons.Count > 0 && line.Reasons[0].Because < Because.Necessary;
}
