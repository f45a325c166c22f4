using System.Globalization;
using System.Text.Json;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>Compares what a reply holds with what is expected there.</summary>
internal static class Expectation
{
    /// <summary>What differs, or null. A quantity may be off by its tolerance, anything else is compared exactly.</summary>
    public static string? Difference(JsonElement? found, JsonElement expected)
    {
        if (found is not { } f)
            return $"is not given, expected {expected.GetRawText()}";
        if (IsQuantity(expected))
            return OfQuantity(f, expected);
        return JsonElement.DeepEquals(f, expected) ? null : $"is {f.GetRawText()}, expected {expected.GetRawText()}";
    }

    /// <summary>Why an expectation cannot be understood, or null.</summary>
    public static string? Malformed(JsonElement expected)
    {
        if (!IsQuantity(expected))
            return null;
        if (expected.GetProperty("value").ValueKind != JsonValueKind.Number)
            return "value is not a number";
        if (UnitOf(expected) is null)
            return $"{expected.GetProperty("unit").GetRawText()} is not a unit";
        if (!expected.TryGetProperty("tolerance", out var tolerance))
            return null;
        return tolerance.ValueKind == JsonValueKind.Number && tolerance.GetDouble() >= 0
            ? null
            : "tolerance is not a number of zero or more";
    }

    private static string? OfQuantity(JsonElement found, JsonElement expected)
    {
        if (!IsQuantity(found))
            return $"is {found.GetRawText()}, expected a quantity";
        var (unit, foundUnit) = (UnitOf(expected)!, UnitOf(found)!);
        if (foundUnit.Dimension != unit.Dimension)
            return $"is in {foundUnit}, expected in {unit}";
        var value = found.GetProperty("value").GetDouble();
        if (foundUnit != unit)
            value = unit.FromBase(foundUnit.ToBase(value));
        var wanted = expected.GetProperty("value").GetDouble();
        var tolerance = expected.TryGetProperty("tolerance", out var t) ? t.GetDouble() : 0;
        return Math.Abs(value - wanted) <= tolerance
            ? null
            : string.Create(
                CultureInfo.InvariantCulture,
                $"is {value} {unit}, expected {wanted} {unit} within {tolerance}"
            );
    }

    private static bool IsQuantity(JsonElement element) =>
        element.ValueKind == JsonValueKind.Object
        && element.TryGetProperty("value", out _)
        && element.TryGetProperty("unit", out _);

    private static Unit? UnitOf(JsonElement quantity) =>
        quantity.GetProperty("unit") is { ValueKind: JsonValueKind.String } unit
            ? UnitTable.Find(unit.GetString()!)
            : null;
}
