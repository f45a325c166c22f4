using System.Globalization;
using static Witnessmark.Bench.Campaigns.RecallField;

namespace Witnessmark.Bench.Campaigns;

/// <summary>A row of the public recall file: a campaign, or why it cannot be read.</summary>
/// <remarks>Strict on purpose: a row with a date or a flag that says nothing known is set aside with its reason, never half believed.</remarks>
public readonly ref struct RecallRow
{
    private const string NoDate = "19010101";
    private const string UnknownYear = "9999";
    private readonly ReadOnlySpan<byte> line;
    private readonly Span<Range> fields;
    private readonly MixedText encoding;

    private RecallRow(ReadOnlySpan<byte> line, Span<Range> fields)
    {
        this.line = line;
        this.fields = fields;
        encoding = MixedTexts.Of(line);
    }

    /// <summary>The longest line that is read, in bytes.</summary>
    public static int LongestLine => RecallLayout.LongestLine;

    /// <summary>Reads a line of bytes without its line feed.</summary>
    public static (Campaign? Campaign, string? Why) Read(ReadOnlySpan<byte> line)
    {
        if (line.Length > LongestLine)
            return (null, TooLong(line.Length));
        line = line.TrimEnd((byte)'\r');
        Span<Range> fields = stackalloc Range[RecallLayout.Newest + 2];
        var count = Split(line, fields);
        if (count is < RecallLayout.Oldest or > RecallLayout.Newest)
            return (
                null,
                Says($"{(count > RecallLayout.Newest ? "more than 29" : count)} fields; 22 to 29 are allowed")
            );
        try
        {
            return (new RecallRow(line, fields[..count]).Campaign(), null);
        }
        catch (UnreadableField unreadable)
        {
            return (null, unreadable.Message);
        }
    }

    /// <summary>Why a line of so many bytes is not read.</summary>
    public static string TooLong(long bytes) => Says($"a line of {bytes} bytes; at most {LongestLine} are allowed");

    /// <summary>Where the fields lie, and how many there are, counted no further than one too many. A tab at the very end closes the last field.</summary>
    private static int Split(ReadOnlySpan<byte> line, Span<Range> fields)
    {
        var (count, from) = (0, 0);
        while (count < fields.Length)
        {
            var length = line[from..].IndexOf((byte)'\t');
            fields[count++] = length < 0 ? from.. : from..(from + length);
            if (length < 0)
                break;
            from += length + 1;
        }
        return count == RecallLayout.Newest + 1 && line[fields[count - 1]].IsEmpty ? count - 1 : count;
    }

    private Campaign Campaign()
    {
        var make = Needed(MakeTxt, "MAKETXT");
        if (NameKey.Of(make).Length == 0)
            throw new UnreadableField("MAKETXT", make, "a name with a letter or a digit");
        return new(
            CampaignSource.Public,
            Needed(CampNo, "CAMPNO"),
            make,
            Text(ModelTxt),
            Year(),
            Text(CompName),
            Says()
        );
    }

    private CampaignText Says() =>
        new(
            Text(MfgName),
            Text(MfgCampNo),
            Day(BgMan, "BGMAN"),
            Day(EndMan, "ENDMAN"),
            Day(RcDate, "RCDATE"),
            Count(PotAff, "POTAFF"),
            Text(DescDefect),
            Text(ConsequenceDefect),
            Text(CorrectiveAction),
            Text(Notes),
            Flag(DoNotDrive, "DO_NOT_DRIVE"),
            Flag(ParkOutside, "PARK_OUTSIDE"),
            []
        );

    private ReadOnlySpan<byte> Bytes(RecallField field) =>
        (int)field < fields.Length ? line[fields[(int)field]] : default;

    private string Text(RecallField field) => encoding.Read(Bytes(field));

    private string Needed(RecallField field, string name) =>
        Text(field) is { Length: > 0 } text ? text : throw new UnreadableField(name, "", "some text");

    private int? Year() =>
        Text(YearTxt) switch
        {
            "" or UnknownYear => null,
            var text => Whole(text) is >= 1885 and <= 2100 and var year && text.Length == 4
                ? year
                : throw new UnreadableField("YEARTXT", text, "a year from 1885 to 2100, or 9999 for unknown"),
        };

    private DateOnly? Day(RecallField field, string name) =>
        Text(field) switch
        {
            "" or NoDate => null,
            var text => DateOnly.TryParseExact(text, "yyyyMMdd", CultureInfo.InvariantCulture, default, out var day)
                ? day
                : throw new UnreadableField(name, text, "a day such as 20260331, or nothing"),
        };

    private int? Count(RecallField field, string name) =>
        Text(field) switch
        {
            "" => null,
            var text => Whole(text) ?? throw new UnreadableField(name, text, "a whole number from 0, or nothing"),
        };

    private bool? Flag(RecallField field, string name) =>
        Text(field).ToUpperInvariant() switch
        {
            "" => null,
            "YES" => true,
            "NO" => false,
            var text => throw new UnreadableField(name, text, "Yes, No or nothing"),
        };

    private static int? Whole(string text) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var whole) ? whole : null;

    private static string Says(FormattableString sentence) => FormattableString.Invariant(sentence);

    private sealed class UnreadableField(string name, string text, string allowed)
        : Exception($"{name} is \"{(text.Length <= 40 ? text : text[..40] + "…")}\"; allowed: {allowed}");
}
