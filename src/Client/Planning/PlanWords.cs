using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Planning;

namespace Witnessmark.Client.Planning;

/// <summary>Words of plan and bench order.</summary>
internal static class PlanWords
{
    public const string Title = "Plan";
    public const string ToPlan = "Plan: add or drop";
    public const string Order = "Bench order";
    public const string Searching = "Looking for a better order. Until then the one before stands.";
    public const string First = "Looking for the order that takes the least time.";
    public const string Steps = "All steps with their times";
    public const string Free = "Another order is yours to choose, except where one point has to come first.";
    public const string Asked = "Asked for besides";
    public const string AskedWhy = "What is asked for and is not in this job: take it in, or leave it with a reason.";
    public const string InPlan = "In the plan";
    public const string DroppedTitle = "Dropped";
    public const string Add = "Add a point";
    public const string TakeIn = "Take in";
    public const string Drop = "Drop";
    public const string Back = "Take back in";
    public const string Cancel = "Cancel";
    public const string Find = "Which point?";
    public const string FindHint = "chain, pads, coolant …";
    public const string Why = "Why?";
    public const string AddedWhy = "Why is it done today?";
    public const string Lead = "Somebody's safety hangs on it. Which lead stands for that?";
    public const string NoLeads = "Somebody's safety hangs on it, and shop.toml names no leads: it stays in the plan.";
    public const string ReasonMissing = "A reason is needed.";
    public const string LeadMissing = "A reason and a lead's name are needed.";
    public const string PointMissing = "Choose the point and say why.";
    public const string Safety = "safety";

    /// <summary>Offered to be tapped instead of typed.</summary>
    public static readonly IReadOnlyList<string> Reasons =
    [
        "Done elsewhere, seen on paper",
        "The owner does not want it",
        "Next visit",
    ];

    public static string Points(int count) => count == 1 ? "1 point" : $"{count} points";

    public static string PastPromise(string words) =>
        $"\"{words}\" lies in the past. Promise a day that comes, or leave it empty.";

    public static string ComesFirst(IEnumerable<PointState> first) =>
        $"First, because the order is safety: {string.Join(", ", first.Select(p => p.Point.Title))}.";

    public static string Dropped(string why, string by, string? lead) =>
        lead is null ? $"{why} ({by})" : $"{why} ({by}; {lead} stands for it)";

    /// <summary>The book's reason is known; what else asks for a point is worth a look.</summary>
    public static bool IsSpecial(PlanLine line) =>
        line.Reasons.Count > 0 && line.Reasons[0].Because < Because.Necessary;
}
