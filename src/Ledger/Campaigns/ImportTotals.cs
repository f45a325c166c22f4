namespace Witnessmark.Ledger.Campaigns;

/// <summary>What an import did. Each row counts once: rows = new + updated + unchanged + duplicates + set aside.</summary>
/// <param name="Rows">Lines that are not empty, or records of the shop's own list.</param>
/// <param name="New">Records that were not there.</param>
/// <param name="Updated">Records that say something else than before.</param>
/// <param name="Unchanged">Records that say what they said.</param>
/// <param name="Duplicates">Rows whose record stands in the same file more than once, each after the first.</param>
/// <param name="SetAside">Rows that cannot be read.</param>
public sealed record ImportTotals(long Rows, long New, long Updated, long Unchanged, long Duplicates, long SetAside);

/// <summary>How far an import is.</summary>
/// <param name="Rows">Rows so far.</param>
/// <param name="Bytes">Bytes read.</param>
/// <param name="OfBytes">Bytes of the file.</param>
public readonly record struct ImportProgress(long Rows, long Bytes, long OfBytes);

/// <summary>A row that cannot be read.</summary>
/// <param name="line">From 1.</param>
/// <param name="why">The reason.</param>
/// <param name="bytes">The line as it stands in the file; only its beginning when it is too long to be one.</param>
public readonly ref struct RowAside(long line, string why, ReadOnlySpan<byte> bytes)
{
    /// <summary>From 1.</summary>
    public long Line { get; } = line;

    /// <summary>The reason.</summary>
    public string Why { get; } = why;

    /// <summary>As it stands in the file.</summary>
    public ReadOnlySpan<byte> Bytes { get; } = bytes;
}

/// <summary>Takes a row that is set aside.</summary>
public delegate void RowAsideTaker(RowAside row);

/// <summary>An import that is kept: what the answers come from.</summary>
/// <param name="Source">Public list or own list.</param>
/// <param name="File">Name of the file.</param>
/// <param name="At">When, ISO 8601, universal time.</param>
/// <param name="Rows">Rows in it.</param>
/// <param name="SetAside">Rows that could not be read.</param>
public sealed record ImportedList(
    Bench.Campaigns.CampaignSource Source,
    string File,
    string At,
    long Rows,
    long SetAside
);
