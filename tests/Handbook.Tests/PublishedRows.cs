using System.Globalization;

namespace Witnessmark.Handbook.Tests;

/// <summary>The rows of a published table as they are printed, read without the handbook's own reader.</summary>
internal static class PublishedRows
{
    /// <summary>Of a table that the handbook uses.</summary>
    public static IReadOnlyList<string[]> Of(string table) => In(Path.Combine("Published", table));

    /// <summary>Of a table that only tests use, e.g. <c>vin/check-digits.csv</c>.</summary>
    public static IReadOnlyList<string[]> ForTests(string table) => In(Path.Combine("ReferenceData", table));

    public static double Number(string printed) => double.Parse(printed, CultureInfo.InvariantCulture);

    private static string[][] In(string path) =>
        [
            .. File.ReadLines(Path.Combine(AppContext.BaseDirectory, path))
                .Where(l => l.Length > 0 && !l.StartsWith('#'))
                .Skip(1)
                .Select(l => l.Split(',')),
        ];
}
