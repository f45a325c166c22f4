using System.Buffers.Binary;
using System.Text;
using Witnessmark.Handbook.Sound;

namespace Witnessmark.Handbook.Tests.Sound;

/// <summary>WAV files built byte by byte as IBM and Microsoft's specification 1.0 (1991), chapter 3, lays them out.</summary>
public sealed class WavFileTests
{
    private const int Rate = 8000;

    public static TheoryData<int, int, byte[], double> OneSample() =>
        new()
        {
            { 1, 8, [0], -1 },
            { 1, 8, [128], 0 },
            { 1, 8, [192], 0.5 },
            { 1, 16, [0x00, 0x40], 0.5 },
            { 1, 16, [0x01, 0x80], -32767 / 32768.0 },
            { 1, 24, [0x00, 0x00, 0x40], 0.5 },
            { 1, 24, [0x01, 0x02, 0x03], (0x030201) / 8388608.0 },
            { 1, 24, [0xFF, 0xFF, 0xFF], -1 / 8388608.0 },
            { 1, 32, [0x00, 0x00, 0x00, 0xC0], -0.5 },
            { 3, 32, [0x00, 0x00, 0x40, 0x3F], 0.75 }, // IEEE 754 binary32 0x3F400000
        };

    [Theory]
    [MemberData(nameof(OneSample))]
    public void Each_kind_of_sample_is_read_to_the_last_bit(int tag, int bits, byte[] sample, double value) =>
        Assert.Equal([value], Read(Wav(Format(tag, 1, Rate, bits), sample)).Samples);

    [Fact]
    public void Two_channels_are_averaged_sample_by_sample()
    {
        // left 0.5, right −0.25; then left 0, right 1 − 2⁻¹⁵
        byte[] data = [0x00, 0x40, 0x00, 0xE0, 0x00, 0x00, 0xFF, 0x7F];
        Assert.Equal([0.125, 32767 / 65536.0], Read(Wav(Format(1, 2, Rate, 16), data)).Samples);
        byte[] fine = [0x00, 0x00, 0x40, 0x00, 0x00, 0xE0];
        Assert.Equal([0.125], Read(Wav(Format(1, 2, Rate, 24), fine)).Samples);
    }

    [Fact]
    public void The_extended_form_says_the_kind_in_its_longer_name()
    {
        var extended = new byte[40];
        Format(0xFFFE, 1, Rate, 32).CopyTo(extended, 0);
        extended[24] = 3;
        Assert.Equal([0.75], Read(Wav(extended, [0x00, 0x00, 0x40, 0x3F])).Samples);
        // without the longer name nobody knows the kind
        Assert.StartsWith("a WAV file of kind 65534 with 32 bit", Refused(Wav(extended[..39], new byte[4])));
        // a plain file may have a longer format, of which the rest says nothing
        var plain = new byte[40];
        Format(1, 1, Rate, 16).CopyTo(plain, 0);
        plain[24] = 3;
        Assert.Equal([0.5], Read(Wav(plain, [0x00, 0x40])).Samples);
    }

    [Theory]
    [InlineData(4_000)]
    [InlineData(192_000)]
    public void The_ends_of_the_allowed_rates_are_allowed(int rate) =>
        Assert.Equal(rate, Read(Wav(Format(1, 1, rate, 16), [0, 0])).Rate.Hertz);

    [Theory]
    [InlineData(3_999)]
    [InlineData(192_001)]
    public void Rates_beyond_are_refused_with_what_is_allowed(int rate) =>
        Assert.Equal(
            $"a WAV file of {rate} samples a second; allowed are 4000 to 192000",
            Refused(Wav(Format(1, 1, rate, 16), [0, 0]))
        );

    [Fact]
    public void Thirty_seconds_are_allowed_and_one_sample_more_is_not()
    {
        Assert.Equal(30, Read(Wav(Format(1, 2, 4000, 8), new byte[2 * 120_000])).Seconds);
        Assert.Equal("a recording of more than 30 s", Refused(Wav(Format(1, 2, 4000, 8), new byte[2 * 120_001])));
    }

    [Fact]
    public void A_part_of_odd_length_has_one_byte_more_before_the_next()
    {
        byte[] file =
        [
            .. Wav(Format(1, 1, Rate, 16), [])[..36], // up to the samples
            .. Chunk("LIST", [1, 2, 3]),
            .. Chunk("data", [0x00, 0x40]),
        ];
        Assert.Equal([0.5], Read(file).Samples);
    }

    [Fact]
    public void What_is_no_whole_file_is_refused_with_the_reason()
    {
        var whole = Wav(Format(1, 1, Rate, 16), [0x00, 0x40]);
        byte[] avi = [.. whole];
        "AVI "u8.CopyTo(avi.AsSpan(8));
        byte[] big = [.. whole];
        "RIFX"u8.CopyTo(big);
        foreach (var other in (byte[][])[avi, big, whole[..11], []])
        {
            Assert.False(WavFile.Is(other));
            Assert.Equal("not a WAV file: it does not begin with RIFF and WAVE", Refused(other));
        }
        Assert.True(WavFile.Is(whole[..12]));
        Assert.Equal("the WAV file is damaged: it holds no samples", Refused(whole[..36]));
        Assert.Equal("the WAV file is damaged: it holds no samples", Refused(whole[..12]));
        Assert.StartsWith("the WAV file is cut short", Refused(whole[..^1]));
        Assert.Empty(Read(Wav(Format(1, 1, Rate, 16), [])).Samples); // a part of no length at the very end
        Assert.Equal(
            "the WAV file is damaged: its last sample is incomplete",
            Refused(Wav(Format(1, 1, Rate, 16), new byte[3]))
        );
        Assert.Equal("the WAV file is damaged: its format is incomplete", Refused(Wav(new byte[15], [])));
    }

    private static Recording Read(byte[] file)
    {
        Assert.Null(WavFile.Read(file, out var recording));
        return recording!;
    }

    private static string Refused(byte[] file)
    {
        var why = WavFile.Read(file, out var recording);
        Assert.Null(recording);
        return why!;
    }

    private static byte[] Format(int tag, int channels, int rate, int bits)
    {
        var format = new byte[16];
        BinaryPrimitives.WriteUInt16LittleEndian(format, (ushort)tag);
        BinaryPrimitives.WriteUInt16LittleEndian(format.AsSpan(2), (ushort)channels);
        BinaryPrimitives.WriteUInt32LittleEndian(format.AsSpan(4), (uint)rate);
        BinaryPrimitives.WriteUInt32LittleEndian(format.AsSpan(8), (uint)(rate * channels * bits / 8));
        BinaryPrimitives.WriteUInt16LittleEndian(format.AsSpan(12), (ushort)(channels * bits / 8));
        BinaryPrimitives.WriteUInt16LittleEndian(format.AsSpan(14), (ushort)bits);
        return format;
    }

    private static byte[] Wav(byte[] format, byte[] data) =>
        [.. "RIFF"u8, 0, 0, 0, 0, .. "WAVE"u8, .. Chunk("fmt ", format), .. Chunk("data", data)];

    private static byte[] Chunk(string name, byte[] bytes)
    {
        var length = new byte[4];
        BinaryPrimitives.WriteInt32LittleEndian(length, bytes.Length);
        return [.. Encoding.ASCII.GetBytes(name), .. length, .. bytes, .. new byte[bytes.Length % 2]];
    }
}
