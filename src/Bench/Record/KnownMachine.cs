using System.Globalization;
using System.Text.Json;
using Witnessmark.Bench.Machines;

namespace Witnessmark.Bench.Record;

/// <summary>
/// What was known of a machine when its job was opened, as a key of the arrival: the job stays whole on a device, and on paper, that
/// knows no register.
/// </summary>
internal static class KnownMachine
{
    /// <summary>The key in the arrival's body.</summary>
    public const string Key = "known";

    private const string DayForm = "yyyy-MM-dd";

    public static void Write(Utf8JsonWriter json, Machine machine)
    {
        json.WriteStartObject(Key);
        json.WriteString("name", machine.Name);
        Text("vin", machine.Vin.Length > 0 ? machine.Vin : null);
        Text("frame", machine.Frame);
        Text("plate", machine.Plate);
        Text("make", machine.Make);
        if (machine.Year is { } year)
            json.WriteNumber("year", year);
        if (machine is { LastDistanceKilometres: { } last, LastDistanceOn: { } on })
        {
            Text("distance", string.Create(CultureInfo.InvariantCulture, $"{last:0.###} km"));
            Text("distanceOn", on.ToString(DayForm, CultureInfo.InvariantCulture));
        }
        if (machine.Traits is { Count: > 0 } traits)
        {
            json.WriteStartObject("facts");
            foreach (var (name, word) in traits.OrderBy(t => t.Key, StringComparer.Ordinal))
                json.WriteString(name, word);
            json.WriteEndObject();
        }
        json.WriteEndObject();

        void Text(string name, string? value)
        {
            if (value is not null)
                json.WriteString(name, value);
        }
    }

    /// <summary>A day as it is written here, or null.</summary>
    public static DateOnly? Day(string? text) =>
        DateOnly.TryParseExact(text, DayForm, CultureInfo.InvariantCulture, DateTimeStyles.None, out var day)
            ? day
            : null;
}
