namespace Witnessmark.Bench.Campaigns;

/// <summary>Who says it.</summary>
public enum CampaignSource
{
    /// <summary>The regulator's public list. It names make, model and year, never the single machine.</summary>
    Public = 0,

    /// <summary>The shop's own list of bulletins, which may name VINs and days of building.</summary>
    Own = 1,
}

/// <summary>One campaign (a recall or a maker's bulletin) as it concerns one make, model and year.</summary>
/// <param name="Source">Who says it.</param>
/// <param name="Number">The campaign's number as its source writes it.</param>
/// <param name="Make">Make, as written.</param>
/// <param name="Model">Model, as written; empty when the source does not say it.</param>
/// <param name="Year">Model year; null when the source does not know it.</param>
/// <param name="Component">What it is about; with number, make, model and year this tells two records apart.</param>
/// <param name="Says">All the rest.</param>
public sealed record Campaign(
    CampaignSource Source,
    string Number,
    string Make,
    string Model,
    int? Year,
    string Component,
    CampaignText Says
);

/// <summary>What a campaign says about its component: the same words stand behind many models and years.</summary>
/// <param name="Maker">Who answers for it.</param>
/// <param name="MakersNumber">The maker's own number for it; empty when none is given.</param>
/// <param name="BuiltFrom">First day of building that it names, or null.</param>
/// <param name="BuiltTo">Last day of building that it names, or null.</param>
/// <param name="Recorded">Day on which the source recorded it, or null.</param>
/// <param name="Affected">How many vehicles may be affected, or null.</param>
/// <param name="Defect">What is wrong.</param>
/// <param name="Consequence">What may come of it.</param>
/// <param name="Remedy">What is to be done.</param>
/// <param name="Notes">Anything else.</param>
/// <param name="DoNotRide">"Do not ride until it is done"; null when the source does not say.</param>
/// <param name="ParkOutside">"Park outside, away from buildings"; null when the source does not say.</param>
/// <param name="Vins">Ranges of VINs, <see cref="VinRange.ToString"/>; empty when none are named.</param>
public sealed record CampaignText(
    string Maker,
    string MakersNumber,
    DateOnly? BuiltFrom,
    DateOnly? BuiltTo,
    DateOnly? Recorded,
    int? Affected,
    string Defect,
    string Consequence,
    string Remedy,
    string Notes,
    bool? DoNotRide,
    bool? ParkOutside,
    IReadOnlyList<string> Vins
);
