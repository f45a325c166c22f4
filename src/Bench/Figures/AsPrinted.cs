using System.Globalization;
using Witnessmark.Bench.Toml;

namespace Witnessmark.Bench.Figures;

/// <summary>Whether the two units that a maker prints side by side say the same.</summary>
/// <remarks>
/// Own derivation: each number stands for anything that rounds to it, so two of them agree when the distance between them, in
/// one unit, is not more than both half steps together. Checked with numbers on either side of that bound.
/// </remarks>
internal static class AsPrinted
{
    private const double RoundingOfDoubles = 1e-9;

    /// <summary>Notes a mistake at <c>also</c> when it cannot be read or does not say the same.</summary>
    public static void Check(TomlTable table, PrintedQuantity first, string? also)
    {
        if (also is null)
            return;
        if (PrintedQuantity.Read(also, first.Numbers.Count, null, out var second) is { } why)
            table.Wrong(
                "also",
                $"\"{also}\": {why}",
                $"the same as {Written(first, first.Unit.Symbol)} in another unit"
            );
        else if (second!.Unit.Dimension != first.Unit.Dimension)
            table.Wrong("also", $"\"{also}\" measures something else than {first.Unit}", "the same in another unit");
        else if (!Agree(first, second))
            table.Wrong(
                "also",
                Mismatch(first, second, also),
                "two that agree within their printed digits: look again which one is misprinted"
            );
    }

    private static bool Agree(PrintedQuantity a, PrintedQuantity b) =>
        a
            .Numbers.Zip(b.Numbers)
            .All(p =>
            {
                var apart = Math.Abs(a.Unit.ToBase(p.First.Value) - b.Unit.ToBase(p.Second.Value));
                return apart
                    <= p.First.HalfStep * a.Unit.Factor + p.Second.HalfStep * b.Unit.Factor + RoundingOfDoubles;
            });

    private static string Mismatch(PrintedQuantity a, PrintedQuantity b, string also) =>
        $"\"{also}\" is {In(b, a)}, not {Written(a, a.Unit.Symbol)} (which is {In(a, b)})";

    private static string In(PrintedQuantity from, PrintedQuantity like) =>
        Shown(from.Numbers.Select(n => like.Unit.FromBase(from.Unit.ToBase(n.Value))), "0.###") + $" {like.Unit}";

    private static string Written(PrintedQuantity quantity, string symbol) =>
        Shown(quantity.Numbers.Select(n => n.Value), "0.######") + $" {symbol}";

    private static string Shown(IEnumerable<double> numbers, string format) =>
        string.Join(" to ", numbers.Select(n => n.ToString(format, CultureInfo.InvariantCulture)));
}
