using System.Buffers.Binary;

namespace Witnessmark.Paper.Pdf;

/// <summary>Which characters a TrueType font can draw.</summary>
/// <remarks><b>Source.</b> ISO/IEC 14496-22 (Open Font Format), table <c>cmap</c>, subtable format 4: segments of the basic plane.</remarks>
internal sealed class FontCharacters
{
    private readonly List<Segment> segments = [];
    private readonly byte[] font;

    private FontCharacters(byte[] font) => this.font = font;

    /// <summary>Whether there is a glyph.</summary>
    public bool Has(int character) =>
        segments.FirstOrDefault(s => character <= s.Last) is { } segment
        && segment.First <= character
        && Glyph(segment, character) != 0;

    /// <summary>Reads a font.</summary>
    /// <exception cref="InvalidOperationException">It has no such table: not a font of this program.</exception>
    public static FontCharacters Of(byte[] font)
    {
        var cmap = Table(font, "cmap"u8);
        for (var i = 0; i < Short(font, cmap + 2); i++)
        {
            var subtable = cmap + (int)BinaryPrimitives.ReadUInt32BigEndian(font.AsSpan(cmap + 4 + 8 * i + 4));
            if (Short(font, subtable) == 4)
                return Segments(font, subtable);
        }
        throw new InvalidOperationException("The font has no character map of format 4.");
    }

    private static FontCharacters Segments(byte[] font, int at)
    {
        var doubled = Short(font, at + 6);
        var read = new FontCharacters(font);
        for (var i = at + 14; i < at + 14 + doubled; i += 2)
        {
            var offset = i + 2 + 3 * doubled;
            read.segments.Add(
                new(Short(font, i + 2 + doubled), Short(font, i), Short(font, i + 2 + 2 * doubled), offset)
            );
        }
        return read;
    }

    private int Glyph(Segment segment, int character)
    {
        var offset = Short(font, segment.OffsetAt);
        var glyph = offset == 0 ? character : Short(font, segment.OffsetAt + offset + 2 * (character - segment.First));
        return offset != 0 && glyph == 0 ? 0 : (glyph + segment.Delta) & 0xFFFF;
    }

    private static int Table(byte[] font, ReadOnlySpan<byte> tag)
    {
        for (var at = 12; at < 12 + 16 * Short(font, 4); at += 16)
            if (font.AsSpan(at, 4).SequenceEqual(tag))
                return (int)BinaryPrimitives.ReadUInt32BigEndian(font.AsSpan(at + 8));
        throw new InvalidOperationException("The font has no character map.");
    }

    private static int Short(byte[] font, int at) => BinaryPrimitives.ReadUInt16BigEndian(font.AsSpan(at));

    private sealed record Segment(int First, int Last, int Delta, int OffsetAt);
}
