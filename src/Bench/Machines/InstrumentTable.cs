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
            (kind == "torque" ? Fraction(table) : Error(table, unit)) ?? 0,
            Amount(table, "replacing", unit, false) ?? 0,
            table.Whole("decimals", 0, 4),
            table.DayOrNothing("checked"),
            kind,
            min,
            max
        )
        {
            Lever = kind == "torque" ? AdapterTable.Length(table, "lever") : null,
        };
        instrument = CalibrationKeys.Read(table, instrument);
        table.NoOtherKeys();
        return instrument;
    }

    /// <summary>
    /// What the maker permits, or what the instrument's own certificate says. <b>Formula.</b> half-width = √3·U/2, so that
    /// half-width/√3 is the certificate's standard uncertainty U/k with k = 2. <b>Source.</b> JCGM 100:2008 (GUM), 4.3.3 and 4.3.7.
    /// </summary>
    private static double? Error(TomlTable table, Unit unit)
    {
        if (!table.Has("certificate"))
            return Amount(table, "error", unit, true);
        if (table.TextOrNothing("error") is not null)
            table.Wrong("certificate", "\"certificate\" beside \"error\"", "one of the two");
        return Amount(table, "certificate", unit, true) * Math.Sqrt(3) / 2;
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
