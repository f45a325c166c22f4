using System.Globalization;
using Witnessmark.Bench.Book;
using Witnessmark.Bench.Campaigns;
using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Judging;
using Witnessmark.Bench.Machines;
using Witnessmark.Bench.Record;
using Witnessmark.Bench.SecondChecks;
using Witnessmark.Bench.Toml;

namespace Witnessmark.Bench.JobFiles;

/// <summary>One step of a job file: what was given, read, corrected, vouched for, marked, left, photographed or noted at one point, a campaign that is settled, or the release.</summary>
internal sealed class JobStep
{
    private static readonly Dictionary<string, CampaignOutcome> Outcomes = new()
    {
        [EntryBody.CampaignDone] = CampaignOutcome.Done,
        [EntryBody.CampaignNotConcerned] = CampaignOutcome.NotConcerned,
    };

    private readonly TomlTable table;
    private readonly Point point;
    private readonly Workbench bench;
    private readonly Drafts drafts;

    private JobStep(TomlTable table, Point point, Workbench bench, Drafts drafts)
    {
        this.table = table;
        this.point = point;
        this.bench = bench;
        this.drafts = drafts;
    }

    public static void Read(
        TomlTable table,
        List<Point> plan,
        Workbench bench,
        Machine machine,
        FigureSheet sheet,
        GivenSteps given,
        DateOnly day,
        Drafts drafts
    )
    {
        if (table.TextOrNothing("release") is { } name)
            drafts.Add(EntryKind.Release, EntryBody.Release(name, bench.Workshop.ReleaseByTwo));
        else if (table.TextOrNothing("campaign") is { } left && table.Has("leave"))
            drafts.Add(EntryKind.CampaignLeft, EntryBody.CampaignLeft(left, table.Text("leave")));
        else if (table.TextOrNothing("campaign") is { } number)
            drafts.Add(
                EntryKind.Campaign,
                EntryBody.Campaign(number, table.OneOf("outcome", Outcomes), table.TextOrNothing("why"))
            );
        else if (table.Has("photograph") && !table.Has("point"))
            given.TakePhotograph(table, null);
        else if (table.Has("point") || !table.Has("note"))
            AtPoint(table, plan, bench, machine, sheet, given, day, drafts);
        else if (table.TextOrNothing("note") is { } words)
            drafts.Add(EntryKind.Note, EntryBody.Note(null, words));
        table.NoOtherKeys();
    }

    private static void AtPoint(
        TomlTable table,
        List<Point> plan,
        Workbench bench,
        Machine machine,
        FigureSheet sheet,
        GivenSteps given,
        DateOnly day,
        Drafts drafts
    )
    {
        var id = table.Text("point");
        if (table.TextOrNothing("add") is { } added)
            PlanStep.Add(table, id, added, plan, bench, machine, sheet, drafts);
        var point = plan.FirstOrDefault(p => p.Id == id);
        if (point is null && id.Length > 0)
            table.Wrong("point", $"\"{id}\" is no point of this job", Nearest.InWords(id, [.. plan.Select(p => p.Id)]));
        // an unknown point's other keys are still read, so that they are not called unknown as well
        var step = new JobStep(table, point ?? plan[0], bench, drafts);
        if (point is null)
            table.LetStand(GivenSteps.Keys);
        else
            given.TakeFigure(table, point);
        step.Reading(machine, given, day, known: point is not null);
        step.Correction();
        if (point is not null)
        {
            given.TakeVouch(table, point);
            given.TakePhotograph(table, point);
        }
        if (table.TruthOrNothing("mark") == true)
            drafts.Add(EntryKind.Mark, EntryBody.Mark(id));
        if (table.TextOrNothing("drop") is { } dropped && point is not null)
            PlanStep.Drop(table, point, dropped, bench.Workshop, drafts);
        if (table.TextOrNothing("leave") is { } why)
            drafts.Add(EntryKind.Left, EntryBody.Left(id, why));
        if (table.TextOrNothing("note") is { } note)
            drafts.Add(EntryKind.Note, EntryBody.Note(id, note));
    }

    private void Reading(Machine machine, GivenSteps given, DateOnly day, bool known)
    {
        var (raw, places, key) = Raw();
        var with = table.TextOrNothing("with") ?? point.Reading.Instrument;
        var sure = table.TruthOrNothing("sure") ?? false;
        var second = Second();
        if (key is null || !known)
            return;
        var instrument = with is null ? null : bench.Workshop.Instruments.GetValueOrDefault(with);
        if (with is not null && instrument is null)
            table.Wrong(
                "with",
                $"there is no instrument \"{with}\" in the shop",
                Nearest.InWords(with, [.. bench.Workshop.Instruments.Keys])
            );
        var (opinion, why) = Judge.Reading(new(point, given.Judging(point), machine, raw, places, instrument, day));
        if (opinion is null)
            table.Wrong(key, why!, point.Reading.Words);
        else if (!sure && Doubt(raw) is { } doubt)
            table.Wrong(key, doubt.Question, "the value that was read, or sure = true beside it");
        drafts.Add(
            second is null ? EntryKind.Reading : EntryKind.SecondReading,
            EntryBody.Reading(point.Id, raw, places.Count > 0 ? places : null, with, sure),
            second
        );
    }

    /// <summary>Who read it as the second person, or null: one of the shop's people, and not the job's technician.</summary>
    private string? Second()
    {
        if (table.TextOrNothing("second") is not { Length: > 0 } name)
            return null;
        var others = bench.Workshop.People.Where(p => !SecondCheck.IsSame(p, drafts.Technician)).ToList();
        if (!others.Contains(name))
            table.Wrong("second", $"\"{name}\" is no second person here", Nearest.InWords(name, others));
        return name;
    }

    private Doubt? Doubt(IReadOnlyList<string> raw)
    {
        if (point.Reading.Unit is not { } unit)
            return null;
        var values = raw.Select(r => RawValue.In(r, unit, out _) ?? double.NaN).ToArray();
        return TenTimes.About(point.Reading, values).FirstOrDefault();
    }

    private (IReadOnlyList<string> Raw, IReadOnlyList<string> Places, string? Key) Raw()
    {
        var (left, right) = (table.Repeats("left"), table.Repeats("right"));
        var things = point.Reading.Places;
        if (left.Count + right.Count > 0)
            return (
                [.. left, .. right],
                [.. left.Select(_ => "left"), .. right.Select(_ => "right")],
                table.Has("left") ? "left" : "right"
            );
        if (table.TruthOrNothing("right-all") is { } all)
            return ([.. things.Select(_ => all ? "yes" : "no")], things, "right-all");
        if (table.TruthOrNothing("done") == true)
            return ([], [], "done");
        if (!table.Has("read"))
            return ([], [], null);
        var raw = table.Repeats("read");
        var named = point.Reading.Kind is ReadingKind.Places or ReadingKind.Seen or ReadingKind.TyreDate;
        return (raw, named && raw.Count == things.Count ? things : [], "read");
    }

    private void Correction()
    {
        if (Number("turned") is { } both)
            drafts.Add(EntryKind.Correction, EntryBody.Turns(point.Id, both));
        if ((Number("turned-left"), Number("turned-right")) is ({ } left, { } right))
            drafts.Add(EntryKind.Correction, EntryBody.SideTurns(point.Id, left, right));
        else if (table.Has("turned-left") != table.Has("turned-right"))
            table.Wrong(
                table.Has("turned-left") ? "turned-left" : "turned-right",
                "one side alone",
                "turned-left and turned-right, 0 for a side not turned"
            );
        if (table.QuantityOrNothing("added", Handbook.Quantities.Dimension.Volume) is { } added)
            drafts.Add(EntryKind.Correction, EntryBody.Added(point.Id, added.ToString()));
        if (table.TextOrNothing("did") is { } did)
            drafts.Add(EntryKind.Correction, EntryBody.Did(point.Id, did));
    }

    private string? Number(string key)
    {
        if (table.TextOrNothing(key) is not { } text)
            return null;
        if (
            double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var turns)
            && Math.Abs(turns) <= 50
        )
            return text;
        table.Wrong(key, $"\"{text}\"", "turns in quotes, tightening positive, e.g. \"2\" or \"-0.25\"");
        return null;
    }
}
