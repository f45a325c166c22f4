using System.Text;
using System.Text.Unicode;

namespace Witnessmark.Bench.Campaigns;

/// <summary>
/// Text of a file whose encoding nobody declares and which changes from line to line: UTF-8 where the bytes are valid
/// UTF-8, else Windows-1252 where it has a sign for every byte, else ISO 8859-1, which has one for all.
/// </summary>
/// <remarks><b>Source.</b> Unicode Consortium, Mappings/VENDORS/MICSFT/WINDOWS/CP1252.TXT: 81, 8D, 8F, 90, 9D are not defined.</remarks>
internal enum MixedText
{
    Utf8,
    Windows1252,
    Latin1,
}

/// <summary>Tells the encoding of a line and reads with it.</summary>
internal static class MixedTexts
{
    // bytes 80 to 9F; a space stands for a byte that has no sign
    private const string Upper = "€ ‚ƒ„…†‡ˆ‰Š‹Œ Ž  ‘’“”•–—˜™š›œ žŸ";

    /// <summary>The first of the three that the whole line is valid in.</summary>
    public static MixedText Of(ReadOnlySpan<byte> line)
    {
        if (Utf8.IsValid(line))
            return MixedText.Utf8;
        foreach (var sign in line)
            if (sign is >= 0x80 and <= 0x9f && Upper[sign - 0x80] == ' ')
                return MixedText.Latin1;
        return MixedText.Windows1252;
    }

    /// <summary>The text of a part of that line, without the spaces round it.</summary>
    public static string Read(this MixedText encoding, ReadOnlySpan<byte> part)
    {
        part = part.Trim((byte)' ');
        return encoding switch
        {
            _ when part.IsEmpty => "",
            MixedText.Utf8 => Encoding.UTF8.GetString(part),
            MixedText.Latin1 => Encoding.Latin1.GetString(part),
            _ => string.Create(part.Length, part, Write),
        };
    }

    private static void Write(Span<char> to, ReadOnlySpan<byte> from)
    {
        for (var i = 0; i < from.Length; i++)
            to[i] = from[i] is >= 0x80 and <= 0x9f and var sign ? Upper[sign - 0x80] : (char)from[i];
    }
}
