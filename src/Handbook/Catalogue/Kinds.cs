using System.Globalization;
using System.Text.Json;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>What may stand at a key, in words.</summary>
internal static class Kinds
{
    public static string Of(Dimension dimension)
    {
        var units = UnitTable.Measuring(dimension).Select(u => u.Symbol).ToArray();
        var usual = dimension == Dimension.Number ? "%" : units[0];
        return $"text with a unit, e.g. \"1 {usual}\"" + (units.Length == 1 ? "" : $" ({string.Join(", ", units)})");
    }

    public static string Number(double min, double max) =>
        (double.IsFinite(min), double.IsFinite(max)) switch
        {
            (true, true) => string.Create(CultureInfo.InvariantCulture, $"number from {min} to {max}"),
            (true, false) => string.Create(CultureInfo.InvariantCulture, $"number, {min} or more"),
            (false, true) => string.Create(CultureInfo.InvariantCulture, $"number, {max} or less"),
            _ => "number",
        };

    public static double ReadNumber(JsonElement e, string path, string kind, double min, double max) =>
        e.ValueKind == JsonValueKind.Number
        && e.TryGetDouble(out var value)
        && double.IsFinite(value)
        && value >= min
        && value <= max
            ? value + 0.0 // minus zero is zero
            : throw new MalformedGiven(path, Given.Found(e), kind);
}
