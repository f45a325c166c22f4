using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;

namespace Witnessmark.Paper.Pdf;

/// <summary>Makes the file that the writer left into one for the archive: same sheet, same bytes.</summary>
/// <remarks>
/// <para>Chance and clock go out: names of font subsets are counted, dates are the sheet's day, ids are fixed.</para>
/// <para>It says that it is PDF/A-3, level A (ISO 19005-3:2012, 6.6.4), where the writer knows PDF/A-1 only.</para>
/// <para>Streams are compressed here (RFC 1950): the writer leaves their end out, at which strict readers stumble.</para>
/// </remarks>
internal static partial class ArchiveFile
{
    /// <summary>The file, its objects in their order, with a new table of where they stand (ISO 32000-1:2008, 7.5.4).</summary>
    /// <param name="pdf">As saved, uncompressed.</param>
    /// <param name="day">The sheet's.</param>
    public static byte[] Of(byte[] pdf, DateOnly day)
    {
        var text = Encoding.Latin1.GetString(pdf);
        var places = Places(text);
        var tags = new Dictionary<string, string>();
        var file = new StringBuilder(text[..places.Min(p => p.At)]);
        var table = new SortedDictionary<int, int>();
        var ends = places.Select(p => p.At).Append(TableAt(text)).Order().ToList();
        foreach (var (number, at) in places.OrderBy(p => p.At))
        {
            table[number] = file.Length;
            file.Append(Settled(text[at..ends.First(e => e > at)], day, tags));
        }
        var start = file.Length;
        file.Append(CultureInfo.InvariantCulture, $"xref\n0 {table.Count + 1}\n0000000000 65535 f \n");
        foreach (var at in table.Values)
            file.Append(CultureInfo.InvariantCulture, $"{at:D10} 00000 n \n");
        file.Append(Trailer().Match(text[TableAt(text)..]).Value);
        file.Append(CultureInfo.InvariantCulture, $"\nstartxref\n{start}\n%%EOF\n");
        return Encoding.Latin1.GetBytes(file.ToString());
    }

    private static int TableAt(string text) =>
        int.Parse(
            text[(text.LastIndexOf("startxref", StringComparison.Ordinal) + 9)..]
                .Split(default(char[]), StringSplitOptions.RemoveEmptyEntries)[0],
            CultureInfo.InvariantCulture
        );

    /// <summary>Number and place of every object in use. The writer numbers them without a gap.</summary>
    private static List<(int Number, int At)> Places(string text) =>
        [
            .. Entry()
                .Matches(text[TableAt(text)..])
                .Select(
                    (m, number) =>
                        (
                            number,
                            At: int.Parse(m.Groups[1].Value, CultureInfo.InvariantCulture),
                            Used: m.Groups[2].Value == "n"
                        )
                )
                .Where(e => e.Used)
                .Select(e => (e.number, e.At)),
        ];

    private static string Settled(string given, DateOnly day, Dictionary<string, string> tags)
    {
        var stream = Stream().Match(given);
        if (!stream.Success)
            return Named(Dated(given, day), tags);
        var head = Named(given[..stream.Index], tags);
        var length = int.Parse(Length().Match(head).Groups[1].Value, CultureInfo.InvariantCulture);
        var content = given.Substring(stream.Index + stream.Length, length);
        if (head.Contains("/Metadata", StringComparison.Ordinal))
            content = Declared(Dated(content, day));
        else if (head.Contains("/Filter/FlateDecode", StringComparison.Ordinal))
            content = Compressed(Unpacked(content));
        else if (!head.Contains("/Filter", StringComparison.Ordinal))
        {
            content = Compressed(content);
            head = head.Insert(head.IndexOf("<<", StringComparison.Ordinal) + 2, "/Filter/FlateDecode");
        }
        head = Length().Replace(head, $"/Length {content.Length}");
        return $"{head}stream\n{content}\nendstream\nendobj\n";
    }

    private static string Unpacked(string content)
    {
        using var packed = new ZLibStream(
            new MemoryStream(Encoding.Latin1.GetBytes(content)),
            CompressionMode.Decompress
        );
        using var whole = new MemoryStream();
        packed.CopyTo(whole);
        return Encoding.Latin1.GetString(whole.ToArray());
    }

    private static string Compressed(string content)
    {
        using var packed = new MemoryStream();
        using (var zlib = new ZLibStream(packed, CompressionLevel.SmallestSize))
            zlib.Write(Encoding.Latin1.GetBytes(content));
        return Encoding.Latin1.GetString(packed.ToArray());
    }

    private static string Declared(string metadata) =>
        metadata.Replace("<pdfaid:part>1<", "<pdfaid:part>3<", StringComparison.Ordinal);

    private static string Dated(string text, DateOnly day)
    {
        var info = $"({PdfDay.Of(day)})";
        text = InfoDate().Replace(text, info);
        text = Moment().Replace(text, day.ToString("'>'yyyy-MM-dd'T00:00:00+00:00<'", CultureInfo.InvariantCulture));
        return Uuid().Replace(text, "uuid:00000000-0000-4000-8000-000000000000");
    }

    /// <summary>AAAAAA, AAAAAB and so on in the order of appearance.</summary>
    private static string Named(string text, Dictionary<string, string> tags) =>
        SubsetTag()
            .Replace(
                text,
                m =>
                {
                    if (!tags.TryGetValue(m.Groups[1].Value, out var counted))
                        tags[m.Groups[1].Value] = counted = "AAAAA" + (char)('A' + tags.Count);
                    return $"/{counted}+";
                }
            );

    [GeneratedRegex(@"(\d{10}) \d{5} ([nf])")]
    private static partial Regex Entry();

    [GeneratedRegex(@"trailer\s*<<.*>>")]
    private static partial Regex Trailer();

    [GeneratedRegex(@"(?<=>>\s*)stream\r?\n")]
    private static partial Regex Stream();

    [GeneratedRegex(@"/Length (\d+)")]
    private static partial Regex Length();

    [GeneratedRegex("/([A-Z]{6})\\+(?=Atkinson)")]
    private static partial Regex SubsetTag();

    [GeneratedRegex("uuid:[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}")]
    private static partial Regex Uuid();

    [GeneratedRegex("\\(D:[0-9]{14}[+-][0-9]{2}'[0-9]{2}'\\)")]
    private static partial Regex InfoDate();

    [GeneratedRegex(">[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9:]{8}(?:[.0-9]*)(?:[+-][0-9]{2}:[0-9]{2}|Z)<")]
    private static partial Regex Moment();
}
