namespace Witnessmark.Paper.Pdf;

/// <summary>What a row is to somebody who has the page read aloud.</summary>
internal enum RowKind
{
    /// <summary>Text beside text.</summary>
    Text,

    /// <summary>The names of a table's columns.</summary>
    Columns,

    /// <summary>A row of a table.</summary>
    TableRow,
}

/// <summary>A row that has found its place.</summary>
/// <param name="Page">From 0.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Cells">Its cells, each with its upper edge.</param>
/// <param name="Rule">Where the line under it runs, or null.</param>
internal sealed record PlacedRow(int Page, RowKind Kind, IReadOnlyList<(Cell Cell, double Top)> Cells, double? Rule);
