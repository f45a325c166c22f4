namespace Witnessmark.Calc;

/// <summary>Lines of bytes from a stream that may pause anywhere; the caller sees when the next one would have to be waited for.</summary>
internal sealed class Lines(Stream from)
{
    private byte[] buffer = new byte[1 << 16];
    private int start;
    private int end;
    private int searched;
    private bool ended;

    /// <summary>The next line that has already arrived, without its line feed; valid until <see cref="ReadMore"/>.</summary>
    public bool TryTake(out ReadOnlyMemory<byte> line)
    {
        var feed = buffer.AsSpan(searched, end - searched).IndexOf((byte)'\n');
        var stop = feed >= 0 ? searched + feed : end;
        line = buffer.AsMemory(start, stop - start);
        if (feed < 0 && !(ended && stop > start))
        {
            searched = end;
            return false;
        }
        start = searched = feed >= 0 ? stop + 1 : stop;
        return true;
    }

    /// <summary>Waits for more bytes; false when there is nothing left, not even a last line without a line feed.</summary>
    public bool ReadMore()
    {
        if (ended)
            return false;
        MakeRoom();
        var read = from.Read(buffer, end, buffer.Length - end);
        end += read;
        ended = read == 0;
        return !ended || end > start;
    }

    private void MakeRoom()
    {
        if (start > 0)
        {
            buffer.AsSpan(start, end - start).CopyTo(buffer);
            (end, searched, start) = (end - start, searched - start, 0);
        }
        if (end == buffer.Length)
            Array.Resize(ref buffer, 2 * buffer.Length);
    }
}
