using System.Globalization;

namespace Witnessmark.Ledger;

/// <summary>How moments are written in the ledger: UTC, RFC 3339 with milliseconds.</summary>
internal static class Moment
{
    public static string Text(DateTimeOffset moment) =>
        moment.UtcDateTime.ToString("yyyy-MM-dd'T'HH:mm:ss.fff'Z'", CultureInfo.InvariantCulture);
}
