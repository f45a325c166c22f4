using Witnessmark.Bench.Day;
using Witnessmark.Bench.Toml;

namespace Witnessmark.Bench.Machines;

/// <summary>What the shop says of one of its people.</summary>
/// <param name="Name">As in <c>people</c>.</param>
/// <param name="Skills">What they can do; null: everything.</param>
/// <param name="Hours">When they are there; null: whenever the shop is open.</param>
public sealed record ShopTechnician(string Name, IReadOnlyList<string>? Skills, Hours? Hours);

/// <summary>Reads <c>[hours]</c> and the tables <c>[technicians.NAME]</c>.</summary>
internal static class TechnicianTable
{
    /// <summary>Opening hours, or null when the shop says none.</summary>
    public static Hours? Opening(TomlTable root)
    {
        if (root.TableOrNothing("hours") is not { } table)
            return null;
        var hours = HoursTable.Read(table, null, (table, "closed"));
        if (hours.Week.All(day => day.Count == 0) && table.Keys.All(k => k == "closed"))
            table.Mistakes.Add(table.Place, "no hours on any day", "monday = [\"08:00-17:00\"] and so on");
        table.NoOtherKeys();
        return hours;
    }

    /// <summary>All people, each with what is said of them.</summary>
    public static IReadOnlyList<ShopTechnician> All(TomlTable root, IReadOnlyList<string> people, Hours? open)
    {
        var said = root.Tables("technicians").ToArray().ToDictionary(t => t.Name, t => t.Table);
        foreach (var (name, table) in said.Where(t => !people.Contains(t.Key)))
            table.Mistakes.Add(
                root.Table("technicians").KeyAt(name),
                $"\"{name}\" is not among the people of the workshop",
                Nearest.InWords(name, [.. people])
            );
        return [.. people.Select(p => said.TryGetValue(p, out var table) ? Read(p, table, open) : new(p, null, null))];
    }

    private static ShopTechnician Read(string name, TomlTable table, Hours? open)
    {
        var skills = table.Texts("skills");
        var own = table.TableOrNothing("hours");
        var days = own ?? new TomlTable(table.Place, table.Mistakes);
        var hours = HoursTable.Read(days, open, (table, "away"));
        own?.NoOtherKeys();
        table.NoOtherKeys();
        return new(name, table.Has("skills") ? skills : null, open is null && own is null ? null : hours);
    }
}
