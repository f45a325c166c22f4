using Witnessmark.Bench.Book;
using Witnessmark.Bench.Campaigns;
using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Machines;
using Witnessmark.Bench.Planning;
using Witnessmark.Client.Device;

namespace Witnessmark.Client.Planning;

/// <summary>What a plan is asked for on this device: with the visits that it knows of.</summary>
internal static class Proposals
{
    /// <summary>For a machine that arrives.</summary>
    public static IReadOnlyList<PlanLine> For(
        AtHand hand,
        Machine machine,
        FigureSheet sheet,
        string purpose,
        IReadOnlyList<FoundCampaign>? campaigns
    ) =>
        Proposal.Of(
            hand.Workbench!,
            new(purpose, sheet, machine, hand.Today)
            {
                Visits = Visits(hand, machine, null),
                Campaigns = campaigns,
                Settings = hand.Workbench!.Workshop.Planning,
            }
        );

    /// <summary>For a job that is open: what was read in it counts too.</summary>
    public static IReadOnlyList<PlanLine> For(AtHand hand, JobState job)
    {
        var arrival = job.Arrival!;
        return Proposal.Of(
            hand.Workbench!,
            new(arrival.Purpose, arrival.Sheet, arrival.Machine, PastVisit.DayOf(arrival.At) ?? hand.Today)
            {
                Visits = Visits(hand, arrival.Machine, job.Job),
                Today = PastVisit.Of(job),
                Campaigns = job.CampaignsOpen,
                Settings = hand.Workbench!.Workshop.Planning,
            }
        );
    }

    private static IReadOnlyList<PastVisit> Visits(AtHand hand, Machine machine, string? besides) =>
        [.. hand.JobsOf(machine.Id).Where(j => j.Job != besides).Select(PastVisit.Of).OfType<PastVisit>()];
}
