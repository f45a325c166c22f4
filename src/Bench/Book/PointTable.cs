using Witnessmark.Bench.Toml;
using Witnessmark.Handbook.Catalogue;

namespace Witnessmark.Bench.Book;

/// <summary>Reads one table <c>[points.NAME]</c>.</summary>
internal static class PointTable
{
    private static readonly Dictionary<string, bool> Guards = new() { ["safety"] = true, ["use"] = false };

    public static Point Read(string id, string region, TomlTable table)
    {
        var correction = Correction(table);
        var point = new Point(
            id,
            region,
            table.Text("title"),
            table.OneOf("guards", Guards),
            table.Texts("reach"),
            ReadingTable.Read(table.Table("reading")),
            table.TextOrNothing("judged-by"),
            correction,
            BenchTime.ReadHands(table, "hands"),
            BenchTime.Read(table, "waits", needed: false),
            table.Texts("again-after"),
            table.TextOrNothing("caution"),
            ConsumableList.Read(table),
            CorrectionSettings.Read(table.TableOrNothing("settings"), correction),
            OnlyFor.Read(table.TableOrNothing("only-for")),
            table.Texts("after"),
            table.Texts("asks-again"),
            table.Texts("figures"),
            Calculation(table)
        )
        {
            Skill = table.TextOrNothing("skill"),
            SettlesAfter = table.Texts("settles-after"),
        };
        foreach (var key in new[] { "again-after", "after", "asks-again", "settles-after" })
            if (table.Texts(key).Contains(id))
                table.Mistakes.Add(table.At(key, id), $"\"{id}\" in its own \"{key}\"", "other points only");
        table.NoOtherKeys();
        return point;
    }

    private static string? Correction(TomlTable table)
    {
        var name = table.TextOrNothing("corrected-by");
        if (name is { Length: > 0 } && !CorrectionSettings.All.ContainsKey(name))
            table.Wrong(
                "corrected-by",
                $"no calculation \"{name}\" corrects a point",
                Nearest.InWords(name, [.. CorrectionSettings.All.Keys])
            );
        return name;
    }

    private static string? Calculation(TomlTable table)
    {
        var name = table.TextOrNothing("calculation");
        if (name is { Length: > 0 } && Calculations.Named(name) is null)
            table.Wrong(
                "calculation",
                $"the handbook has no calculation \"{name}\"",
                Nearest.To(name, Calculations.All.Select(c => c.Name)) is { } near
                    ? $"\"{near}\""
                    : "a name that \"witnessmark calc list\" shows"
            );
        return name;
    }
}
