using Witnessmark.Bench.Book;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Toml;

namespace Witnessmark.Bench.Day;

/// <summary>Reads a day as a file people write: when it begins, and its jobs.</summary>
public static class DayFile
{
    /// <summary>The question; what is wrong with the file goes to the mistakes, all of it at once.</summary>
    public static DayQuestion? Read(TomlTable root, Workbench bench)
    {
        var day = root.Table("day");
        var now = day.MomentOrNothing("now");
        if (!day.Has("now"))
            day.Wrong("now", "\"now\" is missing", "now = 2026-03-31T08:00:00, when the plan begins");
        if (bench.Workshop.Hours is null)
            root.Table("files").Wrong("shop", "the workshop says no opening hours", "[hours] in shop.toml");
        day.NoOtherKeys();
        var frame = DayOfJobs.Frame(bench, now ?? default);
        var jobs = root.Tables("jobs").ToArray();
        if (jobs.Length == 0)
            root.Mistakes.Add(root.Place, "no jobs", "a table [jobs.NUMBER] for each");
        List<DayJob> read = [];
        foreach (var (id, table) in jobs)
            if (Job(id, table, bench, frame) is { } job)
                read.Add(job);
        root.NoOtherKeys();
        return frame is null ? null : frame with { Jobs = read };
    }

    private static DayJob? Job(string id, TomlTable table, Workbench bench, DayQuestion? frame)
    {
        var points = table.Has("steps") ? [] : Points(table, bench);
        var steps = table.Has("steps") ? [.. table.TableList("steps").Select(Step)] : JobWork.Of(points, bench.Book);
        if (table.Has("steps") && steps.Count == 0)
            table.Wrong("steps", "no steps", "steps = [{ what = \"brakes\", hands = \"90 min\" }]");
        var machine = table.TextOrNothing("machine") is { } m ? bench.Workshop.Machines.GetValueOrDefault(m) : null;
        var title = table.TextOrNothing("title") ?? machine?.Name ?? id;
        var (promised, parts) = (table.MomentOrNothing("promised"), table.MomentOrNothing("parts"));
        var skills = table.Texts("skills").Concat(JobWork.Skills(points)).Distinct().ToList();
        var held = Held(table, bench, frame);
        table.NoOtherKeys();
        return frame is null
            ? null
            : new(
                id,
                title,
                steps,
                promised is { } p ? frame.Minute(p) : null,
                parts is { } a ? frame.Minute(a) : null,
                skills,
                held
            );
    }

    private static IReadOnlyList<Point> Points(TomlTable table, Workbench bench)
    {
        var (id, purpose) = (table.Text("machine"), table.Text("purpose"));
        var machine = Known(table, "machine", id, bench.Workshop.Machines);
        if (Known(table, "purpose", purpose, bench.Book.Purposes) is null || machine is null)
            return [];
        return bench.Newest(machine.Sheet) is { } sheet
            ? [.. bench.Plan(purpose, sheet, machine).Select(p => bench.Book.Points[p.Point])]
            : [];
    }

    private static DayStep Step(TomlTable table)
    {
        var (what, hands, waits) = (
            Sentence.Of(table.Text("what")),
            BenchTime.Read(table, "hands", needed: true),
            BenchTime.Read(table, "waits", needed: false)
        );
        if (table.Has("hands") && hands.TotalMinutes is < 1 or > Plannable.MostHands)
            table.Wrong("hands", $"{hands.TotalMinutes:0.##} min of hands-on work in one piece", "1 to 1440 min");
        table.NoOtherKeys();
        return new(what, (int)Math.Ceiling(hands.TotalMinutes), (int)Math.Ceiling(waits.TotalMinutes));
    }

    private static Held? Held(TomlTable table, Workbench bench, DayQuestion? frame)
    {
        if (table.TableOrNothing("begun") is { } begun)
        {
            var (by, lift, at) = (begun.Text("by"), begun.TextOrNothing("lift"), begun.MomentOrNothing("at"));
            Person(begun, "by", by, bench);
            if (lift is not null && !bench.Workshop.Lifts.Contains(lift))
                begun.Wrong("lift", $"there is no lift \"{lift}\"", Nearest.InWords(lift, [.. bench.Workshop.Lifts]));
            if (at is { } began && frame is not null && frame.Minute(began) > frame.Now)
                begun.Wrong(
                    "at",
                    $"{ShopTime.Write(began)} is still to come",
                    "a moment up to now; placed = … for one to come"
                );
            begun.NoOtherKeys();
            return new(by, at is { } start ? frame?.Minute(start) : null, lift, Begun: true);
        }
        if (table.TableOrNothing("placed") is not { } placed)
            return null;
        var (technician, moment) = (placed.Text("technician"), placed.MomentOrNothing("start"));
        Person(placed, "technician", technician, bench);
        placed.NoOtherKeys();
        return new(technician, moment is { } from ? frame?.Minute(from) : null);
    }

    private static void Person(TomlTable table, string key, string name, Workbench bench)
    {
        if (name.Length > 0 && !bench.Workshop.People.Contains(name))
            table.Wrong(
                key,
                $"\"{name}\" is not among the people of the workshop",
                Nearest.InWords(name, [.. bench.Workshop.People])
            );
    }

    private static T? Known<T>(TomlTable table, string key, string name, IReadOnlyDictionary<string, T> all)
        where T : class
    {
        var found = all.GetValueOrDefault(name);
        if (found is null && name.Length > 0)
            table.Wrong(key, $"there is no {key} \"{name}\"", Nearest.InWords(name, [.. all.Keys]));
        return found;
    }
}
