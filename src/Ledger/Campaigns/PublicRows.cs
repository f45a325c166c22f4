using System.Collections.Concurrent;
using System.Diagnostics.CodeAnalysis;
using Witnessmark.Bench.Campaigns;

namespace Witnessmark.Ledger.Campaigns;

/// <summary>
/// Reads the public file row by row into the store. One thread takes the rows apart while the other writes.
/// </summary>
internal static class PublicRows
{
    private const int RowsInBatch = 1024;
    private const int BatchesAhead = 2;

    public static ImportTotals Write(
        Stream file,
        CampaignWriter writer,
        RowAsideTaker aside,
        Action<ImportProgress> progress,
        CancellationToken cancel
    )
    {
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(cancel);
        using var ahead = new BlockingCollection<Batch>(BatchesAhead);
        var size = file.CanSeek ? file.Length : 0;
        var reading = Task.Run(() => Read(file, ahead, stop.Token), CancellationToken.None);
        var (rows, setAside) = (0L, 0L);
        try
        {
            foreach (var batch in ahead.GetConsumingEnumerable(cancel))
            {
                cancel.ThrowIfCancellationRequested();
                setAside += Write(batch.Rows, writer, aside);
                rows += batch.Rows.Count;
                progress(new(rows, batch.Read, size));
            }
        }
        finally
        {
            stop.Cancel();
            Ended(reading);
        }
        cancel.ThrowIfCancellationRequested();
        return writer.Finish(rows, setAside);
    }

    private static long Write(List<Row> rows, CampaignWriter writer, RowAsideTaker aside)
    {
        var setAside = 0L;
        foreach (var row in rows)
        {
            if (row.Campaign is { } campaign)
            {
                writer.Write(campaign, row.Key);
                continue;
            }
            setAside++;
            aside(new(row.Number, row.Why!, row.Line));
        }
        return setAside;
    }

    // A file that cannot be read on is thrown here; that it was told to stop is nothing
    private static void Ended(Task reading)
    {
        try
        {
            reading.GetAwaiter().GetResult();
        }
        catch (OperationCanceledException) { }
    }

    private static void Read(Stream file, BlockingCollection<Batch> ahead, CancellationToken stop)
    {
        try
        {
            var lines = new BoundedLines(file, RecallRow.LongestLine);
            var digest = new SaysDigest();
            List<Row> rows = [];
            while (Next(lines, digest, out var row))
            {
                rows.Add(row);
                if (rows.Count < RowsInBatch)
                    continue;
                ahead.Add(new(rows, lines.Read), stop);
                rows = new(RowsInBatch);
            }
            ahead.Add(new(rows, lines.Read), stop);
        }
        finally
        {
            ahead.CompleteAdding();
        }
    }

    private static bool Next(BoundedLines lines, SaysDigest digest, [NotNullWhen(true)] out Row? row)
    {
        while (lines.Next(out var line))
        {
            if (lines.Number == 1 && line.StartsWith("\uFEFF"u8))
                line = line[3..];
            if (line.TrimEnd((byte)'\r').IsEmpty)
                continue;
            var (campaign, why) =
                lines.Length > RecallRow.LongestLine ? (null, RecallRow.TooLong(lines.Length)) : RecallRow.Read(line);
            row = campaign is null
                ? new(lines.Number, null, [], why, line.ToArray())
                : new(lines.Number, campaign, digest.Of(campaign.Says), null, []);
            return true;
        }
        row = null;
        return false;
    }

    /// <param name="Rows">In the order of the file.</param>
    /// <param name="Read">Bytes of the file up to there.</param>
    private sealed record Batch(List<Row> Rows, long Read);

    /// <param name="Number">Of its line.</param>
    /// <param name="Campaign">Null when it cannot be read.</param>
    /// <param name="Key">The <see cref="SaysDigest"/> of what it says.</param>
    /// <param name="Why">Why it cannot be read.</param>
    /// <param name="Line">Its bytes, of those only that cannot be read.</param>
    private sealed record Row(long Number, Campaign? Campaign, byte[] Key, string? Why, byte[] Line);
}
