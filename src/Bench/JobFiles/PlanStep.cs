using Witnessmark.Bench.Book;
using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Machines;
using Witnessmark.Bench.Record;
using Witnessmark.Bench.Toml;

namespace Witnessmark.Bench.JobFiles;

/// <summary>A step of a job file that takes a point into the plan or out of it.</summary>
internal static class PlanStep
{
    public static void Add(
        TomlTable table,
        string id,
        string why,
        List<Point> plan,
        Workbench bench,
        Machine machine,
        FigureSheet sheet,
        Drafts drafts
    )
    {
        if (!bench.Book.Points.TryGetValue(id, out var point))
            return; // told where the point is looked up
        if (!bench.HasPoint(point, sheet, machine))
            table.Wrong("add", $"this machine has no \"{id}\"", "a point that the machine has");
        drafts.Add(EntryKind.Planned, EntryBody.Planned(id, why));
        if (!plan.Contains(point))
            plan.Add(point);
    }

    public static void Drop(TomlTable table, Point point, string why, Workshop shop, Drafts drafts)
    {
        var lead = table.TextOrNothing("lead");
        if (point.Safety && lead is null)
            table.Wrong("drop", $"somebody's safety hangs on \"{point.Id}\"", "lead = the name of a lead beside it");
        else if (lead is not null && !shop.IsLead(lead))
            table.Wrong(
                "lead",
                $"\"{lead}\" is no lead of this shop",
                shop.Leads.Count == 0
                    ? "leads = [\"NAME\"] under [workshop] in shop.toml"
                    : Nearest.InWords(lead, shop.Leads)
            );
        drafts.Add(EntryKind.Dropped, EntryBody.Dropped(point.Id, why, lead));
    }
}
