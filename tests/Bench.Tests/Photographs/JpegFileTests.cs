using System.Security.Cryptography;
using FsCheck.Xunit;
using Witnessmark.Bench.Photographs;

namespace Witnessmark.Bench.Tests.Photographs;

/// <summary>Against ITU-T T.81 (09/1992) annex B, whose parts <see cref="Jpegs"/> puts together.</summary>
public class JpegFileTests
{
    [Fact]
    public void A_plain_picture_stays_as_it_is()
    {
        var file = Jpegs.Plain(800, 600);
        var read = JpegFile.Read(file).Certain;
        Assert.Equal((800, 600, true), (read.Width, read.Height, read.WasPlain));
        Assert.Equal(file, read.Plain);
    }

    public static TheoryData<string, byte[]> NotThePicture =>
        new()
        {
            { "place", Jpegs.Place },
            { "another application", Jpegs.Segment(0xEF, [1, 2, 3]) },
            { "colour profile", Jpegs.Segment(0xE2, [1, 2, 3]) },
            { "comment", Jpegs.Segment(0xFE, [.. "taken by me"u8]) },
            { "thumbnail", Jpegs.Segment(0xE0, [.. "JFIF\0"u8, 1, 2, 0, 0, 1, 0, 1, 1, 1, 9, 9, 9]) },
            { "extension", Jpegs.Segment(0xE0, [.. "JFXX\0"u8, 1, 2, 0, 0, 1, 0, 1, 0, 0]) },
        };

    [Theory]
    [MemberData(nameof(NotThePicture))]
    public void What_is_not_the_picture_is_left_out(string what, byte[] segment)
    {
        Assert.NotEmpty(what);
        var file = Jpegs.Of(Jpegs.Jfif, segment, Jpegs.Tables, Jpegs.Frame(800, 600), Jpegs.Scan);
        var read = JpegFile.Read(file).Certain;
        Assert.False(read.WasPlain);
        Assert.Equal(Jpegs.Plain(), read.Plain);
    }

    // a small file whose passes are nothing but their heads keeps whoever draws it busy for long
    [Theory]
    [InlineData(64, true)]
    [InlineData(65, false)]
    public void It_is_drawn_in_a_number_of_passes_that_ends(int scans, bool taken)
    {
        byte[][] parts =
        [
            Jpegs.Jfif,
            Jpegs.Tables,
            Jpegs.Frame(800, 600, 0xC2),
            .. Enumerable.Repeat(Jpegs.Scan, scans),
        ];
        Assert.Equal(taken ? null : "unusual-jpeg", JpegFile.Read(Jpegs.Of(parts)).Refusal?.Key);
    }

    [Fact]
    public void It_is_left_out_between_scans_and_behind_the_end_too()
    {
        byte[] file =
        [
            .. Jpegs.Of(Jpegs.Jfif, Jpegs.Tables, Jpegs.Frame(800, 600), Jpegs.Scan, Jpegs.Place, Jpegs.Scan),
            .. "a film behind the picture"u8,
        ];
        var read = JpegFile.Read(file).Certain;
        Assert.False(read.WasPlain);
        Assert.Equal(Jpegs.Of(Jpegs.Jfif, Jpegs.Tables, Jpegs.Frame(800, 600), Jpegs.Scan, Jpegs.Scan), read.Plain);
    }

    [Theory]
    [InlineData(0xC0, 1)]
    [InlineData(0xC1, 3)]
    [InlineData(0xC2, 3)]
    public void Sequential_and_progressive_in_grey_and_colour_are_taken(byte frame, byte components) =>
        Assert.Null(JpegFile.Read(With(Jpegs.Frame(8, 8, frame, components))).Refusal);

    [Theory]
    [InlineData(0xC0, 4, "4 colours, for print")]
    [InlineData(0xC3, 3, "FFC3")] // lossless
    [InlineData(0xC9, 3, "FFC9")] // arithmetic
    public void What_not_every_program_can_show_is_refused(byte frame, byte components, string said)
    {
        var refusal = JpegFile.Read(With(Jpegs.Frame(8, 8, frame, components))).Refusal;
        Assert.Equal("unusual-jpeg", refusal?.Key);
        Assert.Contains(said, refusal?.Because);
    }

    [Fact]
    public void Without_a_frame_a_scan_or_a_size_it_is_torn()
    {
        Assert.Equal("torn", JpegFile.Read(Jpegs.Of(Jpegs.Tables, Jpegs.Scan)).Refusal?.Key);
        Assert.Equal("torn", JpegFile.Read(Jpegs.Of(Jpegs.Tables, Jpegs.Frame(8, 8))).Refusal?.Key);
        Assert.Equal("torn", JpegFile.Read(With(Jpegs.Frame(0, 8))).Refusal?.Key);
        Assert.Equal("torn", JpegFile.Read(With(Jpegs.Frame(8, 0))).Refusal?.Key);
        Assert.Equal("torn", JpegFile.Read(With(Jpegs.Segment(0xC0, [8, 0, 8]))).Refusal?.Key);
    }

    [Fact]
    public void A_picture_that_is_cut_anywhere_is_refused()
    {
        var file = Jpegs.Plain();
        for (var length = 0; length < file.Length; length++)
            Assert.NotNull(JpegFile.Read(file[..length]).Refusal);
    }

    [Property(MaxTest = 300)]
    public void Any_bytes_are_answered(byte[] rubbish) =>
        Assert.NotNull(JpegFile.Read([0xFF, 0xD8, 0xFF, .. rubbish ?? []]).Refusal);

    [Theory]
    [InlineData("PNG")]
    [InlineData("")]
    public void Another_file_is_no_picture(string text) =>
        Assert.Equal("not-a-jpeg", JpegFile.Read(System.Text.Encoding.ASCII.GetBytes(text)).Refusal?.Key);

    [Fact]
    public void A_stored_picture_is_named_by_the_hash_of_its_plain_bytes()
    {
        var file = Jpegs.Of(Jpegs.Place, Jpegs.Jfif, Jpegs.Tables, Jpegs.Frame(1600, 2), Jpegs.Scan);
        var stored = StoredPicture.Of(file).Certain;
        Assert.Equal(Convert.ToHexStringLower(SHA256.HashData(stored.Bytes)), stored.Picture.Sha256);
        Assert.Equal(
            (1600, 2, stored.Bytes.Length),
            (stored.Picture.Width, stored.Picture.Height, stored.Picture.Bytes)
        );
        Assert.DoesNotContain("51.5N", System.Text.Encoding.Latin1.GetString(stored.Bytes));
        Assert.True(Picture.IsHash(stored.Picture.Sha256));
    }

    [Fact]
    public void Too_many_pixels_and_too_many_bytes_are_refused()
    {
        Assert.Equal("too-many-pixels", StoredPicture.Of(Jpegs.Plain(1601, 2)).Refusal?.Key);
        Assert.Equal("too-many-pixels", StoredPicture.Of(Jpegs.Plain(2, 1601)).Refusal?.Key);
        Assert.Equal("not-a-jpeg", StoredPicture.Of([1, 2]).Refusal?.Key);
        var room = Picture.MostBytes - Jpegs.Plain().Length;
        Assert.Null(StoredPicture.Of(Filled(room)).Refusal);
        Assert.Equal("too-many-bytes", StoredPicture.Of(Filled(room + 1)).Refusal?.Key);
    }

    private static byte[] Filled(int more) =>
        Jpegs.Of(Jpegs.Jfif, Jpegs.Tables, Jpegs.Frame(800, 600), [.. Jpegs.Scan, .. new byte[more]]);

    private static byte[] With(byte[] frame) => Jpegs.Of(Jpegs.Tables, frame, Jpegs.Scan);
}
