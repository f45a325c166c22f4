using System.Globalization;
using System.Text;
using CsvHelper;
using CsvHelper.Configuration;

namespace Witnessmark.Machines;

/// <summary>A shop's list as a spreadsheet writes it: a head line, fields between commas, semicolons or tabs, quotes where needed (RFC 4180).</summary>
public sealed class CsvList : IDisposable
{
    private const int LongestField = 10_000;
    private static readonly string[] Separators = [",", ";", "\t"];
    private readonly CsvParser parser;
    private bool torn;

    /// <param name="text">From its beginning.</param>
    /// <exception cref="InvalidDataException">There is no head line, or it cannot be read.</exception>
    public CsvList(TextReader text)
    {
        parser = new(
            text,
            new CsvConfiguration(CultureInfo.InvariantCulture)
            {
                DetectDelimiter = true,
                DetectDelimiterValues = Separators,
                BadDataFound = _ => torn = true,
                MaxFieldSize = LongestField,
                IgnoreBlankLines = true,
            }
        );
        if (!Read())
            throw new InvalidDataException("the list is empty: a head line with the names of the columns is needed");
        Head = [.. parser.Record!.Select(c => c.Trim())];
        if (torn)
            throw new InvalidDataException("the head line has a quote in the wrong place");
    }

    /// <summary>Names of the columns.</summary>
    public IReadOnlyList<string> Head { get; }

    /// <summary>The rows after the head line, empty lines passed over.</summary>
    /// <exception cref="InvalidDataException">A field has no end.</exception>
    public IEnumerable<CsvRow> Rows()
    {
        var line = parser.RawRow + 1L;
        while (Read())
        {
            var raw = parser.RawRecord.TrimEnd('\r', '\n');
            var begins = Math.Max(line, parser.RawRow - raw.Count(c => c == '\n'));
            yield return new(begins, torn ? [] : parser.Record!, torn, raw);
            line = parser.RawRow + 1L;
        }
    }

    /// <summary>Reads UTF-8, or UTF-16 where the file says so at its beginning.</summary>
    /// <exception cref="DecoderFallbackException">While reading: it is neither.</exception>
    public static StreamReader Text(Stream file) =>
        new(file, new UTF8Encoding(false, throwOnInvalidBytes: true), detectEncodingFromByteOrderMarks: true);

    public void Dispose() => parser.Dispose();

    private bool Read()
    {
        torn = false;
        try
        {
            return parser.Read();
        }
        catch (MaxFieldSizeException)
        {
            throw new InvalidDataException(
                $"line {parser.RawRow}: a field of more than {LongestField} characters; is a quote not closed?"
            );
        }
    }
}

/// <summary>One row.</summary>
/// <param name="Line">Line of the file on which it begins, from 1.</param>
/// <param name="Fields">Its fields; none when it is torn.</param>
/// <param name="Torn">Whether a quote stands in the wrong place.</param>
/// <param name="Raw">As it stands in the file.</param>
public sealed record CsvRow(long Line, IReadOnlyList<string> Fields, bool Torn, string Raw);
