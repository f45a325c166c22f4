using System.Globalization;
using Witnessmark.Bench.Campaigns;

namespace Witnessmark.Campaigns;

/// <summary>Reads the machine that is asked about from text: from the command line, or from an address.</summary>
internal static class AskedMachineText
{
    private const int LongestName = 200;

    /// <summary>The machine, or what is wrong with the question.</summary>
    public static (AskedMachine? Machine, string? Why) Read(
        string? make,
        string? model,
        string? year,
        string? vin,
        string? built = null
    )
    {
        if ((Wrong("make", make) ?? Wrong("model", model)) is { } wrong)
            return (null, wrong);
        var known = int.TryParse(year, NumberStyles.None, CultureInfo.InvariantCulture, out var number);
        if (!string.IsNullOrEmpty(year) && (!known || number is < 1885 or > 2100))
            return (null, $"year: \"{year}\"; a year from 1885 to 2100 is allowed.");
        if (!string.IsNullOrEmpty(vin) && !VinRange.IsVin(vin))
            return (null, $"vin: \"{vin}\"; 17 digits and capital letters without I, O and Q are allowed.");
        var dated = DateOnly.TryParseExact(built, "yyyy-MM-dd", CultureInfo.InvariantCulture, default, out var day);
        if (!string.IsNullOrEmpty(built) && !dated)
            return (null, $"built: \"{built}\"; a day such as 2026-03-31 is allowed.");
        return (
            new(make!, model!, known ? number : null, string.IsNullOrEmpty(vin) ? null : vin, dated ? day : null),
            null
        );
    }

    private static string? Wrong(string what, string? name) =>
        name is null || NameKey.Of(name).Length == 0 ? $"{what}: \"{name}\"; a name with a letter or a digit is needed."
        : name.Length > LongestName ? $"{what}: {name.Length} characters; at most {LongestName} are allowed."
        : null;
}
