namespace Witnessmark.Campaigns;

/// <summary>The answer for a person at a terminal: what is loud stands first and in capitals.</summary>
internal static class LookUpText
{
    public static void Write(CampaignAnswer answer, TextWriter output)
    {
        var machine = answer.Machine;
        string?[] facts = [$"{machine.Make} {machine.Model}", $"{machine.Year}", machine.Vin];
        output.WriteLine(string.Join(", ", facts.Where(f => !string.IsNullOrEmpty(f))));
        foreach (var list in answer.Lists)
            output.WriteLine(
                $"Looked up in the {list.Source} list {list.File} of {list.At[..10]}: {list.Rows} rows, {list.SetAside} of them set aside."
            );
        foreach (var campaign in answer.Campaigns)
            Write(campaign, output);
        output.WriteLine();
        output.WriteLine(Summary(answer));
        foreach (var withdrawn in answer.Withdrawn)
            output.WriteLine(
                $"Withdrawn: {withdrawn.Number}, by {withdrawn.By} on {withdrawn.At[..10]}: {withdrawn.Because}."
            );
        if (answer.Alike.Count > 0)
            output.WriteLine(
                $"Not looked in: {string.Join(", ", answer.Alike)}. Ask again with that name if the machine is one."
            );
    }

    /// <summary>The warnings of a campaign in capitals; empty when it has none.</summary>
    public static string Loud(AnsweredCampaign campaign) =>
        (campaign.DoNotRide == true ? "DO NOT RIDE. " : "") + (campaign.ParkOutside == true ? "PARK OUTSIDE. " : "");

    private static void Write(AnsweredCampaign campaign, TextWriter output)
    {
        var loud = campaign.Outcome == CampaignWords.Of(Bench.Campaigns.Concern.DoesNot) ? "" : Loud(campaign);
        output.WriteLine();
        output.WriteLine($"{loud}{campaign.Number}  {campaign.Component}");
        output.WriteLine($"  {Outcome(campaign)}: {campaign.Why}.");
        Line("Defect", campaign.Defect);
        Line("Consequence", campaign.Consequence);
        Line("Remedy", campaign.Remedy);
        Line("Notes", campaign.Notes);

        void Line(string what, string text)
        {
            if (text.Length > 0)
                output.WriteLine($"  {what}: {text}");
        }
    }

    private static string Outcome(AnsweredCampaign campaign) =>
        campaign.Outcome switch
        {
            "concerns" => "concerns this machine",
            "may-concern" => "may concern this machine",
            _ => "does not concern this machine",
        };

    private static string Summary(CampaignAnswer answer)
    {
        var concern = answer.Campaigns.Count(c => c.Outcome == "concerns");
        var may = answer.Campaigns.Count(c => c.Outcome == "may-concern");
        return answer.Campaigns.Count == 0
            ? "No campaign in these lists. A list is as old as its day above, and names may be spelled in other words: the maker has the last word."
            : $"{concern} concern it, {may} may concern it, {answer.Campaigns.Count - concern - may} do not.";
    }
}
