using System.Globalization;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Judging;

/// <summary>Reads what was typed into the unit that it is judged in.</summary>
public static class RawValue
{
    /// <summary>The value in <paramref name="unit"/>, or null with the reason why it cannot be one.</summary>
    /// <param name="raw">Decimal text with a unit; a pure number may stand alone. A decimal comma is read as a point.</param>
    /// <param name="unit">The unit wanted.</param>
    /// <param name="why">What is wrong and what is allowed, or null.</param>
    public static double? In(string raw, Unit unit, out Sentence? why)
    {
        var text = WithPoint(raw);
        if (
            unit.Dimension == Dimension.Number
            && double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var bare)
            && double.IsFinite(bare)
        )
        {
            why = null;
            return bare;
        }
        if (Written.Read(text, out var written) is { } unread)
        {
            why = $"\"{raw}\" cannot be read: {unread}. Allowed: a number and a unit, e.g. \"25 {unit}\".";
            return null;
        }
        if (written.Unit.Dimension != unit.Dimension)
        {
            why =
                $"\"{raw}\" is in {written.Unit}, which cannot be read here. Allowed: {string.Join(", ", UnitTable.Measuring(unit.Dimension).Select(u => u.Symbol))}.";
            return null;
        }
        why = null;
        return written.Unit == unit ? written.Value : written.In(unit).Value;
    }

    private static string WithPoint(string raw)
    {
        var trimmed = raw.Trim();
        return trimmed.Count(c => c == ',') == 1 && !trimmed.Contains('.') ? trimmed.Replace(',', '.') : trimmed;
    }
}
