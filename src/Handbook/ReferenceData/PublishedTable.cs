using System.Globalization;

namespace Witnessmark.Handbook.ReferenceData;

/// <summary>
/// A table as it was published, kept as text beside this file and read once. Lines that begin with <c>#</c> say where it comes
/// from, the first other line names the columns, and every further line is one published row.
/// </summary>
internal sealed class PublishedTable
{
    private readonly string name;
    private readonly string[] columns;

    private PublishedTable(string name, string[] columns, IReadOnlyList<Row> rows)
    {
        this.name = name;
        this.columns = columns;
        Rows = rows;
    }

    /// <summary>The rows in published order.</summary>
    public IReadOnlyList<Row> Rows { get; }

    /// <summary>Reads the table of that file name, e.g. <c>speed-symbols.csv</c>.</summary>
    /// <exception cref="InvalidOperationException">There is no such table, or one of its rows is not whole.</exception>
    public static PublishedTable Read(string name)
    {
        using var stream =
            typeof(PublishedTable).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"No published table is called {name}.");
        using var text = new StreamReader(stream);
        return Parse(name, text.ReadToEnd());
    }

    private static PublishedTable Parse(string name, string text)
    {
        var lines = text.Split('\n', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
            .Where(l => !l.StartsWith('#'))
            .ToArray();
        var rows = new List<Row>(lines.Length - 1);
        var table = new PublishedTable(name, lines[0].Split(','), rows);
        foreach (var line in lines.Skip(1))
        {
            var cells = line.Split(',');
            if (cells.Length != table.columns.Length)
                throw new InvalidOperationException($"{name}: \"{line}\" has not as many cells as there are columns.");
            rows.Add(new Row(table, cells));
        }
        return table;
    }

    /// <summary>One published row.</summary>
    public sealed class Row(PublishedTable table, string[] cells)
    {
        /// <summary>What is printed in that column.</summary>
        public string this[string column] => cells[Array.IndexOf(table.columns, column)];

        /// <summary>The number printed in that column, or null where none is printed.</summary>
        public double? Maybe(string column) => this[column].Length == 0 ? null : Number(column);

        /// <summary>The number printed in that column.</summary>
        /// <exception cref="InvalidOperationException">No number is printed there.</exception>
        public double Number(string column) =>
            double.TryParse(this[column], NumberStyles.Float, CultureInfo.InvariantCulture, out var number)
                ? number
                : throw new InvalidOperationException($"{table.name}: {column} is \"{this[column]}\", not a number.");
    }
}
