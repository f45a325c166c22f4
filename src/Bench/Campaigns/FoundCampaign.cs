namespace Witnessmark.Bench.Campaigns;

/// <summary>A campaign that a lookup found open when a machine arrived; the job keeps it, with or without the list.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Component">What it is about.</param>
/// <param name="Certain">True: it concerns the machine. False: it may.</param>
/// <param name="DoNotRide">"Do not ride until it is done".</param>
/// <param name="ParkOutside">"Park outside".</param>
public sealed record FoundCampaign(string Number, string Component, bool Certain, bool DoNotRide, bool ParkOutside);

/// <summary>How a campaign was settled on a job.</summary>
public enum CampaignOutcome
{
    /// <summary>Its remedy was done.</summary>
    Done,

    /// <summary>Somebody found that it does not concern this machine.</summary>
    NotConcerned,
}
