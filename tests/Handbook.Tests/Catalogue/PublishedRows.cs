using System.Globalization;

namespace Witnessmark.Handbook.Tests.Catalogue;

/// <summary>The published tables as the tests read them: by themselves, not through the reader of the handbook.</summary>
internal static class PublishedRows
{
    public static IEnumerable<PublishedRow> Of(string name)
    {
        var lines = File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Published", name))
            .Where(l => !l.StartsWith('#') && l.Length > 0)
            .Select(l => l.Split(','))
            .ToArray();
        return lines.Skip(1).Select(cells => new PublishedRow(lines[0], cells));
    }
}

/// <summary>One row.</summary>
internal sealed record PublishedRow(string[] Columns, string[] Cells)
{
    public string Text(string column) => Cells[Array.IndexOf(Columns, column)];

    public double Number(string column) => double.Parse(Text(column), CultureInfo.InvariantCulture);
}
