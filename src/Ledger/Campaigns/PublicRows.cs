using Witnessmark.Bench.Campaigns;

namespace Witnessmark.Ledger.Campaigns;

/// <summary>Reads the public file row by row into the store.</summary>
internal static class PublicRows
{
    private const int RowsBetweenLooks = 4096;

    public static ImportTotals Write(
        Stream file,
        CampaignWriter writer,
        RowAsideTaker aside,
        Action<ImportProgress> progress,
        CancellationToken cancel
    )
    {
        var lines = new BoundedLines(file, RecallRow.LongestLine);
        var size = file.CanSeek ? file.Length : 0;
        var (rows, setAside) = (0L, 0L);
        while (lines.Next(out var line))
        {
            if (lines.Number == 1 && line.StartsWith("\uFEFF"u8))
                line = line[3..];
            if (line.TrimEnd((byte)'\r').IsEmpty)
                continue;
            if (rows++ % RowsBetweenLooks == 0)
            {
                cancel.ThrowIfCancellationRequested();
                progress(new(rows, lines.Read, size));
            }
            var (campaign, why) =
                lines.Length > RecallRow.LongestLine ? (null, RecallRow.TooLong(lines.Length)) : RecallRow.Read(line);
            if (campaign is not null)
            {
                writer.Write(campaign);
                continue;
            }
            setAside++;
            aside(new(lines.Number, why!, line));
        }
        cancel.ThrowIfCancellationRequested();
        progress(new(rows, lines.Read, size));
        return writer.Finish(rows, setAside);
    }
}
