using System.Globalization;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Stock;

/// <summary>Amounts on the shelf: decimal, so that what comes in and what goes out balances to the last digit.</summary>
public static class Amounts
{
    /// <summary>More than this is a slip of the finger.</summary>
    public const decimal Largest = 1_000_000;

    /// <summary>Without trailing zeros, with a point.</summary>
    public static string Text(decimal amount) => amount.ToString("0.######", CultureInfo.InvariantCulture);

    /// <summary>An amount of an item as somebody typed it: <c>3</c>, or <c>2.5 L</c> of what is drawn loose.</summary>
    /// <returns>The amount, or why it cannot be one and what is allowed.</returns>
    public static (decimal? Amount, Sentence? Why) Read(string text, StockItem item)
    {
        var typed = text.Trim().Replace(',', '.');
        Sentence right = item.Counted is { } unit
            ? (Sentence)$"a number in {unit}, such as \"2.5\""
            : (Sentence)$"a whole number, such as \"3\"";
        if (item.Counted is { } counted && typed.EndsWith(counted.Symbol, StringComparison.Ordinal))
            typed = typed[..^counted.Symbol.Length].TrimEnd();
        if (
            !decimal.TryParse(
                typed,
                NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign,
                CultureInfo.InvariantCulture,
                out var amount
            )
        )
            return (null, $"\"{text}\" is no amount of {item.Name}; right would be {right}.");
        if (amount < 0 || amount > Largest || decimal.Round(amount, 6) != amount)
            return (null, $"\"{text}\": from 0 to 1000000 with at most six decimals is allowed.");
        return item.Counted is null && amount != decimal.Truncate(amount)
            ? (null, $"\"{text}\": {item.Name} is counted in pieces; right would be {right}.")
            : (amount, null);
    }

    /// <summary>The size of a piece as it is kept, whatever way it was typed: <c>2.35 mm</c>.</summary>
    /// <returns>Null when the item has no sizes; or why the size cannot be one.</returns>
    public static (string? Size, Sentence? Why) Size(string? text, StockItem item)
    {
        if (item.Sizes.Count == 0 && item.Measured is null)
            return string.IsNullOrWhiteSpace(text) ? (null, null) : (null, $"{item.Name} has no sizes.");
        Sentence right = item.Measured is { } unit
            ? (Sentence)$"its measured size such as \"2.35 {unit}\""
            : (Sentence)$"one of {string.Join(", ", item.Sizes)}";
        if (text is null || Written.Read(text.Trim().Replace(',', '.'), out var written) is not null)
            return (null, $"size \"{text}\" of {item.Name}; right would be {right}.");
        if (item.Measured is { } measured)
            return written.Unit.Dimension == measured.Dimension && written.Value > 0
                ? (Text(measured, written), null)
                : (null, $"size \"{text}\" of {item.Name}; right would be {right}.");
        return item.Sizes.Cast<Written?>().FirstOrDefault(s => Same(s!.Value, written)) is { } size
            ? ($"{size}", null)
            : (null, $"size \"{text}\" of {item.Name}; right would be {right}.");
    }

    // four decimals of a millimetre are a tenth of a micrometre: finer than any piece is measured
    private static string Text(Unit unit, Written written) =>
        string.Create(CultureInfo.InvariantCulture, $"{Math.Round(written.In(unit).Value, 4):0.####} {unit}");

    private static bool Same(Written a, Written b) =>
        a.Unit.Dimension == b.Unit.Dimension && Math.Abs(a.Base - b.Base) <= 1e-9 * Math.Abs(a.Base);
}
