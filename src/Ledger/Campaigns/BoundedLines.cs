namespace Witnessmark.Ledger.Campaigns;

/// <summary>Lines of bytes from a stream, with their numbers, in memory that does not grow with the file or with a line.</summary>
internal sealed class BoundedLines(Stream from, int longest)
{
    private readonly byte[] buffer = new byte[Math.Max(1 << 18, 2 * longest)];
    private int start;
    private int end;
    private bool ended;

    /// <summary>From 1.</summary>
    public long Number { get; private set; }

    /// <summary>Bytes that were read from the stream so far.</summary>
    public long Read { get; private set; }

    /// <summary>Length of the line in bytes, also where only its beginning was kept.</summary>
    public long Length { get; private set; }

    /// <summary>The next line without its line feed; only the beginning of one that is longer than allowed. Valid until the next call.</summary>
    public bool Next(out ReadOnlySpan<byte> line)
    {
        while (true)
        {
            var feed = buffer.AsSpan(start, end - start).IndexOf((byte)'\n');
            if (feed >= 0 || (ended && end > start))
                return Take(feed >= 0 ? feed : end - start, out line);
            if (ended)
            {
                line = default;
                return false;
            }
            if (end - start > longest)
                return TakeTooLong(out line);
            Fill();
        }
    }

    private bool Take(int length, out ReadOnlySpan<byte> line)
    {
        line = buffer.AsSpan(start, length);
        start = Math.Min(end, start + length + 1);
        Number++;
        Length = length;
        return true;
    }

    /// <summary>Keeps the beginning and passes over the rest, however long it is.</summary>
    private bool TakeTooLong(out ReadOnlySpan<byte> line)
    {
        var kept = buffer.AsSpan(start, longest).ToArray();
        Length = 0;
        int feed;
        while ((feed = buffer.AsSpan(start, end - start).IndexOf((byte)'\n')) < 0 && !ended)
        {
            Length += end - start;
            start = end;
            Fill();
        }
        var rest = feed < 0 ? end - start : feed;
        Length += rest;
        start = Math.Min(end, start + rest + 1);
        Number++;
        line = kept;
        return true;
    }

    private void Fill()
    {
        buffer.AsSpan(start, end - start).CopyTo(buffer);
        (start, end) = (0, end - start);
        var read = from.Read(buffer, end, buffer.Length - end);
        end += read;
        Read += read;
        ended = read == 0;
    }
}
