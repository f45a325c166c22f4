using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Toml;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Book;

/// <summary>Reads one table <c>[points.NAME.reading]</c>.</summary>
internal static class ReadingTable
{
    private static readonly Dictionary<string, ReadingKind> Kinds = new()
    {
        ["value"] = ReadingKind.Value,
        ["marks"] = ReadingKind.Marks,
        ["sides"] = ReadingKind.Sides,
        ["places"] = ReadingKind.Places,
        ["round"] = ReadingKind.Round,
        ["level"] = ReadingKind.Level,
        ["seen"] = ReadingKind.Seen,
        ["tighten"] = ReadingKind.Tighten,
        ["amount"] = ReadingKind.Amount,
        ["done"] = ReadingKind.Done,
        ["vin"] = ReadingKind.Vin,
        ["tyre-date"] = ReadingKind.TyreDate,
    };

    public static ReadingForm Read(TomlTable table)
    {
        var kind = table.OneOf("kind", Kinds);
        var words = table.Text("words");
        var unit = UnitOf(table, kind);
        var places = Places(table, kind);
        var round = kind == ReadingKind.Round;
        var (min, max) = Plausible(table, unit);
        var form = new ReadingForm(
            kind,
            unit,
            words,
            places,
            round ? table.Whole("count", 3, 200) : 0,
            round ? table.Text("step") : null,
            table.TextOrNothing("instrument"),
            min,
            max
        );
        table.NoOtherKeys();
        return form;
    }

    /// <summary>Whether readings of this kind are numbers with the unit that the book names.</summary>
    public static bool HasUnit(ReadingKind kind) =>
        kind
            is ReadingKind.Value
                or ReadingKind.Marks
                or ReadingKind.Sides
                or ReadingKind.Places
                or ReadingKind.Round
                or ReadingKind.Amount;

    private static Unit? UnitOf(TomlTable table, ReadingKind kind)
    {
        if (kind == ReadingKind.Level)
            return UnitTable.Named("1"); // 0 at the low mark, 1 at the high one: there is no other
        if (kind == ReadingKind.Tighten)
            return UnitTable.Named("N·m");
        if (!HasUnit(kind))
            return null;
        if (!table.Has("unit"))
            table.Mistakes.Add(table.Place, "\"unit\" is missing", "unit = \"mm\" or another unit");
        return table.UnitOrNothing("unit");
    }

    private static IReadOnlyList<string> Places(TomlTable table, ReadingKind kind) =>
        kind switch
        {
            ReadingKind.Sides => ["left", "right"],
            ReadingKind.Seen => table.SomeTexts("see"),
            ReadingKind.Places or ReadingKind.TyreDate => table.SomeTexts("places"),
            _ => [],
        };

    private static (double? Min, double? Max) Plausible(TomlTable table, Unit? unit)
    {
        if (unit is null || table.TextOrNothing("plausible") is not { Length: > 0 } text)
            return default;
        var right = $"plausible = text such as \"1 to 90 {unit}\"";
        if (PrintedQuantity.Read(text, 2, unit.Symbol == "1" ? unit : null, out var range) is { } why)
            table.Wrong("plausible", $"\"{text}\": {why}", right);
        else if (range!.Unit.Dimension != unit.Dimension)
            table.Wrong("plausible", $"\"{text}\" measures something else than {unit}", right);
        else if (range.Numbers[0].Value >= range.Numbers[1].Value)
            table.Wrong("plausible", $"\"{text}\": the ends are swapped or equal", "the smaller one first");
        else
            return (In(range.Numbers[0]), In(range.Numbers[1]));
        return default;

        double In(PrintedNumber number) => unit.FromBase(range.Unit.ToBase(number.Value));
    }
}
