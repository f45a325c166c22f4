using Witnessmark.Bench.Campaigns;
using Witnessmark.Bench.Jobs;
using Witnessmark.Client.Device;

namespace Witnessmark.Client.Campaigns;

/// <summary>Words about recalls and bulletins.</summary>
internal static class CampaignWords
{
    public const string Title = "Recalls and bulletins";
    public const string Looking = "Looking in the shop's lists.";
    public const string NotLookedUp = "Not looked up";
    public const string NotNone = "That is not “none”.";
    public const string NoMake = "The shop's file does not say the make of this machine.";
    public const string NoList = "The shop has not taken in any list yet.";
    public const string DoNotRide = "Do not ride";
    public const string ParkOutside = "Park outside";
    public const string More = "What may come of it, what to do";
    public const string Defect = "Defect";
    public const string Consequence = "What may come of it";
    public const string Remedy = "What to do";
    public const string Concerns = "Concerns this machine";
    public const string MayConcern = "May concern this machine: check with the maker";
    public const string Done = "It is done";
    public const string NotConcerned = "Does not concern it";
    public const string LeaveOpen = "It leaves with it open";
    public const string WhyLeft = "Why may it leave without being ridden?";
    public const string WhyNot = "How do you know that it does not concern it?";
    public const string Decide = "Decide";
    public const string Back = "Back";
    public const string AtArrival = "Found open when the machine arrived:";

    public static string None(CampaignsReply reply) =>
        $"None open in the shop's lists ({string.Join(", ", reply.Lists.Select(l => $"{l.File} of {l.At[..10]}"))}).";

    public static string LeftOpen(CampaignLeft left) => $"{left.Number}: left open by {left.Entry.By}: {left.Why}";

    public static string Settled(CampaignSettled settled) =>
        $"{settled.Number}: {(settled.Outcome == CampaignOutcome.Done ? "done" : "does not concern it")}{(settled.Why is { Length: > 0 } why ? $" ({why})" : "")}, {settled.Entry.By}";
}
