using System.Globalization;
using Witnessmark.Bench.Toml;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Stock;

/// <summary>Reads one table <c>[stock.NAME]</c>.</summary>
internal static class StockTable
{
    private static readonly Dimension[] Kinds = [Dimension.Volume, Dimension.Length, Dimension.Mass];

    public static StockItem Read(string id, TomlTable table)
    {
        var name = table.Text("name");
        var counted = Unit(table, "counted");
        var measured = Unit(table, "measured");
        var sizes = Sizes(table);
        if (new[] { counted is not null, measured is not null, sizes.Count > 0 }.Count(said => said) > 1)
            table.Mistakes.Add(table.Place, "more than one of \"counted\", \"measured\" and \"sizes\"", "one of them");
        var item = new StockItem(
            id,
            name,
            [.. table.Texts("serves").Append(name).Distinct()],
            table.Texts("sheets"),
            counted,
            sizes,
            measured,
            LeadDays(table),
            ReorderAt(table, counted ?? (sizes.Count > 0 ? sizes[0].Unit : null)),
            table.TextOrNothing("place")
        );
        table.NoOtherKeys();
        return item;
    }

    private static Unit? Unit(TomlTable table, string key)
    {
        var unit = table.UnitOrNothing(key);
        if (unit is not null && !Kinds.Contains(unit.Dimension))
            table.Wrong(key, $"\"{unit}\"", "a volume, a length or a mass such as \"L\", \"mm\" or \"g\"");
        return unit;
    }

    private static IReadOnlyList<Written> Sizes(TomlTable table)
    {
        List<Written> sizes = [];
        foreach (var text in table.Texts("sizes"))
            if (
                Written.Read(text, out var size) is null
                && size.Base is >= 0.001 and <= 1000
                && Kinds.Contains(size.Unit.Dimension)
                && sizes.All(s => s.Unit.Dimension == size.Unit.Dimension && s.Base != size.Base)
            )
                sizes.Add(size);
            else
                table.Mistakes.Add(
                    table.At("sizes", text),
                    $"\"{text}\"",
                    "sizes such as [\"1 L\", \"4 L\"], each once"
                );
        return sizes;
    }

    private static int? LeadDays(TomlTable table)
    {
        if (table.QuantityOrNothing("lead", Dimension.Duration) is not { } lead)
            return null;
        var days = lead.Base / 86400;
        if (days is < 0 or > 1000)
            table.Wrong("lead", $"\"{lead}\"", "a time from 0 to 1000 day");
        return (int)Math.Ceiling(days);
    }

    private static Written? ReorderAt(TomlTable table, Unit? unit)
    {
        if (table.TextOrNothing("reorder-at") is not { Length: > 0 } text)
            return null;
        if (uint.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var pieces) && pieces <= 100_000)
            return new(pieces, unit is null || table.Has("sizes") ? UnitTable.Named("1") : unit);
        if (
            unit is not null
            && Written.Read(text, out var quantity) is null
            && quantity.Value >= 0
            && quantity.Unit.Dimension == unit.Dimension
        )
            return quantity;
        table.Wrong(
            "reorder-at",
            $"\"{text}\"",
            unit is null ? "pieces such as \"4\"" : $"pieces, or such as \"4 {unit}\""
        );
        return null;
    }
}
