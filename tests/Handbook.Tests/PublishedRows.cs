using System.Globalization;

namespace Witnessmark.Handbook.Tests;

/// <summary>The rows of a published table as they are printed, read without the handbook's own reader.</summary>
internal static class PublishedRows
{
    /// <summary>Of a table that the handbook uses.</summary>
    public static IReadOnlyList<PublishedRow> Of(string table) => In(Path.Combine("Published", table));

    /// <summary>Of a table that only tests use, e.g. <c>vin/check-digits.csv</c>.</summary>
    public static IReadOnlyList<PublishedRow> ForTests(string table) => In(Path.Combine("ReferenceData", table));

    public static double Number(string printed) => double.Parse(printed, CultureInfo.InvariantCulture);

    private static PublishedRow[] In(string path)
    {
        var lines = File.ReadLines(Path.Combine(AppContext.BaseDirectory, path))
            .Where(l => l.Length > 0 && !l.StartsWith('#'))
            .Select(l => l.Split(','))
            .ToArray();
        return [.. lines.Skip(1).Select(cells => new PublishedRow(lines[0], cells))];
    }
}

/// <summary>One row.</summary>
internal sealed record PublishedRow(string[] Columns, string[] Cells)
{
    public string this[int column] => Cells[column];

    public string Text(string column) => Cells[Array.IndexOf(Columns, column)];

    public double Number(string column) => PublishedRows.Number(Text(column));
}
