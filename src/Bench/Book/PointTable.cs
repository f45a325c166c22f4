using Witnessmark.Bench.Toml;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Book;

/// <summary>Reads one table <c>[points.NAME]</c>.</summary>
internal static class PointTable
{
    private static readonly Dictionary<string, bool> Guards = new() { ["safety"] = true, ["use"] = false };
    private static readonly Dictionary<string, int> Drives = new()
    {
        ["chain"] = 0,
        ["belt"] = 1,
        ["shaft"] = 2,
    };

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
            Time(table, "hands", needed: true),
            Time(table, "waits", needed: false),
            table.Texts("again-after"),
            table.TextOrNothing("caution"),
            table.Texts("consumables"),
            CorrectionSettings.Read(table.TableOrNothing("settings"), correction),
            Drive(table)
        );
        if (point.AgainAfter.Contains(id))
            table.Mistakes.Add(table.At("again-after", id), $"\"{id}\" after itself", "other points only");
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

    private static TimeSpan Time(TomlTable table, string key, bool needed)
    {
        if (
            (needed ? table.Quantity(key, Dimension.Duration) : table.QuantityOrNothing(key, Dimension.Duration))
            is not { } time
        )
            return TimeSpan.Zero;
        if (time.Base is >= 0 and <= 7 * 86400)
            return TimeSpan.FromSeconds(time.Base);
        table.Wrong(key, $"\"{time}\"", "a time from 0 min to 7 day");
        return TimeSpan.Zero;
    }

    private static string? Drive(TomlTable table)
    {
        if (table.Has("drive"))
            _ = table.OneOf("drive", Drives);
        return table.TextOrNothing("drive");
    }
}
