using System.Globalization;

namespace Witnessmark.Paper.Pdf;

/// <summary>A day as PDF writes it: its midnight in UTC (ISO 32000-1:2008, 7.9.4).</summary>
internal static class PdfDay
{
    public static string Of(DateOnly day) =>
        day.ToString("'D:'yyyyMMdd", CultureInfo.InvariantCulture) + "000000+00'00'";
}
