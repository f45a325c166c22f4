using System.Globalization;
using System.Text;
using Witnessmark.Bench.Campaigns;

namespace Witnessmark.Bench.Machines;

/// <summary>One row of a shop's list that can be taken. What is null the list does not say: what is on record stays.</summary>
public sealed record RegisterRow(
    string Id,
    string? Vin,
    string? Frame,
    string? Plate,
    string? Make,
    string Name,
    int? Year,
    string? Sheet,
    DistanceOnDay? Distance,
    MachineOwner? Owner
)
{
    private const int LongestText = 200;
    private const int LongestId = 60;
    private const int FirstYear = 1885;
    private const double MostKilometres = 10_000_000;

    /// <summary>1760 yd of exactly 0.9144 m (international yard and pound agreement, 1959).</summary>
    private const double KilometresInMile = 1760 * 0.9144 / 1000;

    /// <summary>Reads a row, or says why it is set aside.</summary>
    /// <param name="columns">Which field says what.</param>
    /// <param name="fields">As they stand in the row.</param>
    /// <param name="today">Nothing lies after it.</param>
    public static (RegisterRow? Row, string? Why) Read(
        RegisterColumns columns,
        IReadOnlyList<string> fields,
        DateOnly today
    )
    {
        return fields.Count != columns.Width
            ? (null, $"{fields.Count} fields; the head line has {columns.Width}")
            : new Fields(columns, fields, today).Row();
    }

    /// <summary>Asks for the fields of one row; notes the first fault and goes on with nothing.</summary>
    private sealed class Fields(RegisterColumns columns, IReadOnlyList<string> fields, DateOnly today)
    {
        private string? why;

        public (RegisterRow?, string?) Row()
        {
            var (vin, frame) = (Vin(), Text("frame"));
            var row = new RegisterRow(
                Id(vin, frame),
                vin,
                frame,
                Text("plate"),
                Text("make"),
                Text("name") ?? Wrong("name: nothing stands there") ?? "",
                Year(),
                Text("sheet"),
                Distance(),
                Owner()
            );
            return why is null ? (row, null) : (null, why);
        }

        private string? Text(string key)
        {
            if (!columns.Places.TryGetValue(key, out var place) || fields[place].Trim() is not { Length: > 0 } text)
                return null;
            return text.Length > LongestText
                    ? Wrong($"{key}: {text.Length} characters; at most {LongestText} are allowed")
                : text.EnumerateRunes().Any(r => Rune.IsControl(r) || r == Rune.ReplacementChar)
                    ? Wrong($"{key}: a character that cannot be printed")
                : text;
        }

        private string Id(string? vin, string? frame)
        {
            if (columns.Places.ContainsKey("id"))
            {
                if (Text("id") is not { } id)
                    Wrong("id: nothing stands there");
                else if (!IsId(id))
                    Wrong($"id: \"{id}\"; up to {LongestId} letters, digits, dashes, dots and low lines are allowed");
                else
                    return id;
                return "";
            }
            var number = string.Concat((vin ?? frame ?? "").Where(char.IsAsciiLetterOrDigit)).ToLowerInvariant();
            if (number.Length == 0)
                Wrong("neither VIN nor frame number tells which machine it is");
            return number;
        }

        private string? Vin()
        {
            if (Text("vin") is not { } written)
                return null;
            var vin = string.Concat(written.Select(c => char.IsAsciiLetterLower(c) ? char.ToUpperInvariant(c) : c));
            return VinRange.IsVin(vin)
                ? vin
                : Wrong(
                    $"vin: \"{written}\" ({written.Length} signs); 17 digits and letters without I, O and Q are allowed. "
                        + "A frame number stands in a column of its own: frame=COLUMN"
                );
        }

        private int? Year()
        {
            if (Text("year") is not { } written)
                return null;
            var last = today.Year + 1; // next year's models come this year
            if (
                int.TryParse(written, NumberStyles.None, CultureInfo.InvariantCulture, out var year)
                && year >= FirstYear
                && year <= last
            )
                return year;
            Wrong($"year: \"{written}\"; a year from {FirstYear} to {last} is allowed");
            return null;
        }

        private DistanceOnDay? Distance()
        {
            var key = columns.Places.ContainsKey("distance-mi") ? "distance-mi" : "distance-km";
            var (written, day) = (Text(key), Text("distance-on"));
            if (written is null && day is null)
                return null;
            if (written is not null && day is not null)
                return Kilometres(key, written) is { } kilometres && Day(day) is { } on ? new(on, kilometres) : null;
            Wrong("a distance and its day need each other; one of them is empty");
            return null;
        }

        private double? Kilometres(string key, string written)
        {
            var number = 0.0;
            if (
                !written.All(c => char.IsAsciiDigit(c) || c == '.') // neither ∞ nor a sign nor thousands
                || !double.TryParse(written, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out number)
            )
            {
                Wrong($"{key}: \"{written}\" is no number such as 12400 or 12400.5");
                return null;
            }
            var kilometres = key == "distance-km" ? number : number * KilometresInMile;
            if (kilometres <= MostKilometres)
                return kilometres;
            Wrong($"{key}: \"{written}\"; at most {MostKilometres:0} km are allowed");
            return null;
        }

        private DateOnly? Day(string written)
        {
            if (!DateOnly.TryParseExact(written, columns.Days, CultureInfo.InvariantCulture, default, out var day))
                Wrong($"distance-on: \"{written}\" is no day written {columns.Days}");
            else if (day > today)
                Wrong($"distance-on: \"{written}\" lies after today");
            else
                return day;
            return null;
        }

        private MachineOwner? Owner()
        {
            var (owner, contact) = (Text("owner"), Text("contact"));
            if (owner is null && contact is not null)
                Wrong("contact: stands without an owner");
            return owner is null ? null : new(owner, contact ?? "");
        }

        private string? Wrong(string reason)
        {
            why ??= reason;
            return null;
        }
    }

    private static bool IsId(string id) =>
        id.Length <= LongestId
        && id.All(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_' or '.')
        && id.Any(char.IsAsciiLetterOrDigit);
}
