using System.Text;
using FsCheck.Xunit;
using Witnessmark.Bench.Campaigns;

namespace Witnessmark.Bench.Tests.Campaigns;

public class RecallRowTests
{
    static RecallRowTests() => Encoding.RegisterProvider(CodePagesEncodingProvider.Instance);

    [Fact]
    public void A_whole_row_gives_every_field_that_is_taken()
    {
        var campaign = Read(new RowText().Bytes());
        Assert.Equal(
            (CampaignSource.Public, "26X-004", "TARNMOOR", "FELL 640", (int?)2024, "FUEL TANK"),
            (campaign.Source, campaign.Number, campaign.Make, campaign.Model, campaign.Year, campaign.Component)
        );
        var says = campaign.Says;
        Assert.Equal(("Tarnmoor Works", "TW-9", (int?)88), (says.Maker, says.MakersNumber, says.Affected));
        Assert.Equal(
            (new DateOnly(2024, 1, 15), new DateOnly(2024, 3, 29), new DateOnly(2026, 6, 10)),
            (says.BuiltFrom, says.BuiltTo, says.Recorded)
        );
        Assert.Equal(
            ("It leaks.", "It burns.", "Replace it.", "Ask them."),
            (says.Defect, says.Consequence, says.Remedy, says.Notes)
        );
        Assert.Equal((false, true), (says.DoNotRide, says.ParkOutside));
        Assert.Empty(says.Vins);
    }

    // the layout grew: 22 fields at first, then NOTES, RCL_CMPT_ID, three of the maker's part, two flags
    [Theory]
    [InlineData(22, "", null)]
    [InlineData(23, "Ask them.", null)]
    [InlineData(24, "Ask them.", null)]
    [InlineData(27, "Ask them.", null)]
    [InlineData(29, "Ask them.", true)]
    public void An_older_layout_does_not_say_what_it_has_no_field_for(int fields, string notes, bool? parkOutside)
    {
        var says = Read(new RowText().Bytes(fields)).Says;
        Assert.Equal((notes, parkOutside), (says.Notes, says.ParkOutside));
        Assert.Equal("Replace it.", says.Remedy);
    }

    [Theory]
    [InlineData(21, "21 fields; 22 to 29 are allowed")]
    [InlineData(1, "1 fields; 22 to 29 are allowed")]
    public void Too_few_fields(int fields, string why) => Assert.Equal(why, Why(new RowText().Bytes(fields)));

    [Fact]
    public void A_tab_at_the_end_is_no_further_field_but_text_behind_it_is()
    {
        Assert.Equal(true, Read(Encoding.UTF8.GetBytes(new RowText().Line() + "\t\r")).Says.ParkOutside);
        Assert.Equal(
            "more than 29 fields; 22 to 29 are allowed",
            Why(Encoding.UTF8.GetBytes(new RowText().Line() + "\tx"))
        );
        Assert.Equal(
            "more than 29 fields; 22 to 29 are allowed",
            Why(Encoding.UTF8.GetBytes(new RowText().Line() + "\t\t"))
        );
    }

    [Theory]
    [InlineData("YEARTXT", "9999")]
    [InlineData("YEARTXT", "")]
    public void A_year_that_is_not_known(string field, string text) =>
        Assert.Null(Read(new RowText().With(field, text).Bytes()).Year);

    [Theory]
    [InlineData("BGMAN", "19010101")]
    [InlineData("BGMAN", "")]
    public void A_placeholder_is_no_day(string field, string text) =>
        Assert.Null(Read(new RowText().With(field, text).Bytes()).Says.BuiltFrom);

    [Theory]
    [InlineData("CAMPNO", "", "CAMPNO is \"\"; allowed: some text")]
    [InlineData("CAMPNO", "   ", "CAMPNO is \"\"; allowed: some text")]
    [InlineData("MAKETXT", "", "MAKETXT is \"\"; allowed: some text")]
    [InlineData("MAKETXT", "--", "MAKETXT is \"--\"; allowed: a name with a letter or a digit")]
    [InlineData("YEARTXT", "1884", "YEARTXT is \"1884\"; allowed: a year from 1885 to 2100, or 9999 for unknown")]
    [InlineData("YEARTXT", "2101", "YEARTXT is \"2101\"; allowed: a year from 1885 to 2100, or 9999 for unknown")]
    [InlineData("YEARTXT", "02024", "YEARTXT is \"02024\"; allowed: a year from 1885 to 2100, or 9999 for unknown")]
    [InlineData("YEARTXT", "YEARTXT", "YEARTXT is \"YEARTXT\"; allowed: a year from 1885 to 2100, or 9999 for unknown")]
    [InlineData("BGMAN", "20241301", "BGMAN is \"20241301\"; allowed: a day such as 20260331, or nothing")]
    [InlineData("ENDMAN", "2024", "ENDMAN is \"2024\"; allowed: a day such as 20260331, or nothing")]
    [InlineData("RCDATE", "20230229", "RCDATE is \"20230229\"; allowed: a day such as 20260331, or nothing")]
    [InlineData("POTAFF", "-1", "POTAFF is \"-1\"; allowed: a whole number from 0, or nothing")]
    [InlineData("POTAFF", "1e3", "POTAFF is \"1e3\"; allowed: a whole number from 0, or nothing")]
    [InlineData("DO_NOT_DRIVE", "Maybe", "DO_NOT_DRIVE is \"MAYBE\"; allowed: Yes, No or nothing")]
    [InlineData("PARK_OUTSIDE", "1", "PARK_OUTSIDE is \"1\"; allowed: Yes, No or nothing")]
    public void What_cannot_be_believed_is_said_with_its_field(string field, string text, string why) =>
        Assert.Equal(why, Why(new RowText().With(field, text).Bytes()));

    [Theory]
    [InlineData("1885", 1885)]
    [InlineData("2100", 2100)]
    public void The_ends_of_the_years(string text, int year) =>
        Assert.Equal(year, Read(new RowText().With("YEARTXT", text).Bytes()).Year);

    [Theory]
    [InlineData("YES", true)]
    [InlineData(" yes ", true)]
    [InlineData("no", false)]
    [InlineData("", null)]
    public void Flags(string text, bool? set) =>
        Assert.Equal(set, Read(new RowText().With("DO_NOT_DRIVE", text).Bytes()).Says.DoNotRide);

    [Fact]
    public void A_line_is_as_long_as_allowed_or_set_aside()
    {
        var room = RecallRow.LongestLine - new RowText().With("NOTES", "").Bytes().Length;
        Assert.Equal(room, Read(new RowText().With("NOTES", new('x', room)).Bytes()).Says.Notes.Length);
        var why = Why(new RowText().With("NOTES", new('x', room + 1)).Bytes());
        Assert.Equal($"a line of {RecallRow.LongestLine + 1} bytes; at most {RecallRow.LongestLine} are allowed", why);
    }

    // oracle: the code page 1252 and Latin 1 of .NET; bytes that 1252 does not define (Unicode's CP1252.TXT) make the line Latin 1
    [Fact]
    public void Each_byte_is_read_as_windows_1252_unless_it_has_no_sign_there()
    {
        byte[] undefined = [0x81, 0x8d, 0x8f, 0x90, 0x9d];
        var windows = Encoding.GetEncoding(1252);
        for (var sign = 0x80; sign <= 0xff; sign++)
        {
            byte[] text = [(byte)'a', (byte)sign, (byte)'z'];
            var expected = undefined.Contains((byte)sign) ? Encoding.Latin1.GetString(text) : windows.GetString(text);
            Assert.Equal(expected, Read(WithDefect(text)).Says.Defect);
        }
    }

    [Fact]
    public void The_encoding_is_that_of_the_whole_line()
    {
        Assert.Equal("Größe – 5 µm", Read(WithDefect(Encoding.UTF8.GetBytes("Größe – 5 µm"))).Says.Defect);
        // one byte without a sign in 1252 makes the dash beside it a control sign of Latin 1
        Assert.Equal("\u0096 \u0081", Read(WithDefect([0x96, 0x20, 0x81])).Says.Defect);
    }

    [Property(MaxTest = 2000)]
    public void Whatever_the_bytes_are_it_is_a_row_or_says_why(byte[] bytes) => RowOrReason(bytes);

    // bounded fuzz: a good row with bytes changed, fields moved, ends cut off
    [Property(MaxTest = 5000)]
    public void A_damaged_row_is_a_row_or_says_why(int seed)
    {
        var chance = new Random(seed);
        var bytes = new RowText().Bytes().ToList();
        byte[] bad = [0, (byte)'\t', (byte)'\r', (byte)'9', 0x80, 0xff, 0xc3, (byte)'"'];
        for (var i = chance.Next(1, 6); i > 0; i--)
        {
            var at = chance.Next(bytes.Count);
            switch (chance.Next(3))
            {
                case 0:
                    bytes[at] = bad[chance.Next(bad.Length)];
                    break;
                case 1:
                    bytes.Insert(at, bad[chance.Next(bad.Length)]);
                    break;
                default:
                    bytes.RemoveRange(at, Math.Min(chance.Next(1, 40), bytes.Count - at - 1));
                    break;
            }
        }
        RowOrReason([.. bytes]);
    }

    private static void RowOrReason(byte[] bytes)
    {
        var (campaign, why) = RecallRow.Read(bytes);
        Assert.True(campaign is null != why is null);
        if (campaign is null)
            return;
        Assert.NotEmpty(campaign.Number);
        Assert.NotEmpty(NameKey.Of(campaign.Make));
        Assert.DoesNotContain('\t', campaign.Number + campaign.Make + campaign.Model + campaign.Says.Defect);
        Assert.True(campaign.Year is null or (>= 1885 and <= 2100));
    }

    private static byte[] WithDefect(byte[] text)
    {
        var parts = new RowText().With("DESC_DEFECT", "@").Line().Split('@');
        return [.. Encoding.ASCII.GetBytes(parts[0]), .. text, .. Encoding.ASCII.GetBytes(parts[1])];
    }

    private static Campaign Read(byte[] line)
    {
        var (campaign, why) = RecallRow.Read(line);
        Assert.Null(why);
        return campaign!;
    }

    private static string Why(byte[] line)
    {
        var (campaign, why) = RecallRow.Read(line);
        Assert.Null(campaign);
        return why!;
    }
}
