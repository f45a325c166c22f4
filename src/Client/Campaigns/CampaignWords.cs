using Witnessmark.Bench.Campaigns;
using Witnessmark.Bench.Jobs;
using Witnessmark.Client.Device;

namespace Witnessmark.Client.Campaigns;

/// <summary>Words about recalls and bulletins.</summary>
internal static class CampaignWords
{
    public static string Title => Say($"Recalls and bulletins");
    public static string Looking => Say($"Looking in the shop's lists.");
    public static string NotLookedUp => Say($"Not looked up");
    public static string NotNone => Say($"That is not “none”.");
    public static string NoMake => Say($"The shop's file does not say the make of this machine.");
    public static string NoList => Say($"The shop has not taken in any list yet.");
    public static string DoNotRide => Say($"Do not ride");
    public static string ParkOutside => Say($"Park outside");
    public static string More => Say($"What may come of it, what to do");
    public static string Defect => Say($"Defect");
    public static string Consequence => Say($"What may come of it");
    public static string Remedy => Say($"What to do");
    public static string AsWritten => Say($"In English, as the public list has it.");
    public static string Concerns => Say($"Concerns this machine");
    public static string MayConcern => Say($"May concern this machine: check with the maker");
    public static string Done => Say($"It is done");
    public static string NotConcerned => Say($"Does not concern it");
    public static string LeaveOpen => Say($"It leaves with it open");
    public static string WhyLeft => Say($"Why may it leave without being ridden?");
    public static string WhyNot => Say($"How do you know that it does not concern it?");
    public static string Decide => Say($"Decide");
    public static string Back => Say($"Back");
    public static string AtArrival => Say($"Found open when the machine arrived:");

    public static string None(CampaignsReply reply) =>
        Say(
            $"None open in the shop's lists ({string.Join(", ", reply.Lists.Select(l => Say($"{l.File} of {l.At[..10]}")))})."
        );

    public static string LeftOpen(CampaignLeft left) => Say($"{left.Number}: left open by {left.Entry.By}: {left.Why}");

    public static string Settled(CampaignSettled settled) =>
        $"{settled.Number}: {(settled.Outcome == CampaignOutcome.Done ? Say($"done") : Say($"does not concern it"))}{(settled.Why is { Length: > 0 } why ? $" ({why})" : "")}, {settled.Entry.By}";
}
