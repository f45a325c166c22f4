using Witnessmark.Bench.Toml;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Machines;

/// <summary>Reads one table <c>[instruments.NAME]</c>.</summary>
internal static class InstrumentTable
{
    private static readonly Dictionary<string, int> Kinds = new()
    {
        ["measure"] = 0,
        ["torque"] = 1,
        ["level"] = 2,
    };

    public static ShopInstrument Read(string id, TomlTable table)
    {
        _ = table.OneOf("kind", Kinds);
        var kind = table.TextOrNothing("kind") ?? "";
        var unit = Unit(table);
        var (min, max) = (Amount(table, "from", unit, false), Amount(table, "to", unit, false));
        if (min >= max)
            table.Wrong("from", "the ends are swapped or equal", "from the smaller one, to the larger one");
        if (kind == "torque" && max is null)
            table.Mistakes.Add(
                table.Place,
                "a torque tool without its range",
                $"from = \"20 {unit}\" and to = \"120 {unit}\""
            );
        var instrument = new ShopInstrument(
            id,
            table.Text("name"),
            unit,
            Amount(table, "resolution", unit, true) ?? 0,
            (kind == "torque" ? Fraction(table) : Amount(table, "error", unit, true)) ?? 0,
            Amount(table, "replacing", unit, false) ?? 0,
            table.Whole("decimals", 0, 4),
            table.DayOrNothing("checked"),
            kind,
            min,
            max
        );
        table.NoOtherKeys();
        return instrument;
    }

    private static Unit Unit(TomlTable table)
    {
        if (!table.Has("unit"))
            table.Mistakes.Add(table.Place, "\"unit\" is missing", "unit = \"mm\" or another unit");
        return table.UnitOrNothing("unit") ?? UnitTable.Named("1");
    }

    /// <summary>A torque tool's error is a share of the setting: ISO 6789 states it so.</summary>
    private static double? Fraction(TomlTable table)
    {
        var error = table.Quantity("error", Dimension.Number)?.Base;
        if (error is <= 0 or > 0.5)
            table.Wrong("error", $"\"{table.Text("error")}\"", "a share of the setting such as \"4 %\"");
        return error;
    }

    private static double? Amount(TomlTable table, string key, Unit unit, bool needed)
    {
        var amount = needed ? table.Quantity(key, unit.Dimension) : table.QuantityOrNothing(key, unit.Dimension);
        if (amount is { Value: < 0 })
            table.Wrong(key, $"\"{amount}\"", "zero or more");
        return amount?.In(unit).Value;
    }
}
