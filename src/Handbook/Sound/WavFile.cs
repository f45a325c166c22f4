using System.Buffers.Binary;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Sound;

/// <summary>Reads the bytes of a WAV file.</summary>
/// <remarks>
/// <para><b>Formula.</b> Whole-number samples are divided by 2^(bits − 1) (8 bit: 128 is taken off first); two channels are averaged.</para>
/// <para><b>Units.</b> Full scale ±1.</para>
/// <para><b>Source.</b> IBM and Microsoft, Multimedia Programming Interface and Data Specifications 1.0 (1991), chapter 3,
/// "Waveform Audio File Format"; WAVE_FORMAT_IEEE_FLOAT (3) and WAVE_FORMAT_EXTENSIBLE (0xFFFE) from Microsoft's mmreg.h (from memory).</para>
/// <para><b>Valid when</b> the samples are not compressed: 8, 16, 24, 32 bit whole numbers or 32 bit floating point, mono or stereo.</para>
/// </remarks>
public static class WavFile
{
    private const int WholeNumbers = 1;
    private const int FloatingPoint = 3;
    private const int Extensible = 0xFFFE;

    /// <summary>Whether the bytes begin as a WAV file does.</summary>
    public static bool Is(byte[] bytes) => Named(bytes, 0, "RIFF") && Named(bytes, 8, "WAVE");

    /// <summary>The sound in the file.</summary>
    /// <param name="bytes">The whole file.</param>
    /// <param name="recording">Its sound, null when it cannot be read.</param>
    /// <returns>Why it cannot be read, or null.</returns>
    public static string? Read(byte[] bytes, out Recording? recording)
    {
        recording = null;
        if (!Is(bytes))
            return "not a WAV file: it does not begin with RIFF and WAVE";
        Format? format = null;
        // A chunk: four letters, its length, its bytes, one more to keep the next at an even place.
        for (var at = 12L; at + 8 <= bytes.Length; )
        {
            var from = (int)at + 8;
            var length = BinaryPrimitives.ReadUInt32LittleEndian(bytes.AsSpan(from - 4));
            if (length > bytes.Length - from)
                return "the WAV file is cut short: a part is longer than what is left of the file";
            if (Named(bytes, (int)at, "fmt "))
            {
                if (Format.Read(bytes.AsSpan(from, (int)length), out format) is { } why)
                    return why;
            }
            else if (Named(bytes, (int)at, "data"))
                return format is { } known
                    ? Samples(bytes.AsSpan(from, (int)length), known, out recording)
                    : "the WAV file is damaged: the samples stand before their format";
            at = from + length + length % 2;
        }
        return "the WAV file is damaged: it holds no samples";
    }

    private static string? Samples(ReadOnlySpan<byte> data, Format format, out Recording? recording)
    {
        recording = null;
        var frame = format.Channels * format.Bits / 8;
        if (data.Length % frame != 0)
            return "the WAV file is damaged: its last sample is incomplete";
        if (data.Length / frame > Recording.MostSeconds * format.Rate)
            return $"a recording of more than {Recording.MostSeconds} s";
        var samples = new double[data.Length / frame];
        for (var i = 0; i < samples.Length; i++)
        {
            for (var channel = 0; channel < format.Channels; channel++)
                samples[i] += One(data[(i * frame + channel * format.Bits / 8)..], format) / format.Channels;
            if (!double.IsFinite(samples[i]))
                return "the WAV file is damaged: a sample is not a finite number";
        }
        recording = new(samples, new Frequency(format.Rate));
        return null;
    }

    private static double One(ReadOnlySpan<byte> at, Format format) =>
        (format.Bits, format.Floating) switch
        {
            (8, _) => (at[0] - 128) / 128.0,
            (16, _) => BinaryPrimitives.ReadInt16LittleEndian(at) / 32768.0,
            (24, _) => (at[0] | at[1] << 8 | (sbyte)at[2] << 16) / 8388608.0,
            (_, false) => BinaryPrimitives.ReadInt32LittleEndian(at) / 2147483648.0,
            _ => BinaryPrimitives.ReadSingleLittleEndian(at),
        };

    private static bool Named(byte[] bytes, int at, string name)
    {
        if (bytes.Length < at + name.Length)
            return false;
        for (var i = 0; i < name.Length; i++)
            if (bytes[at + i] != name[i])
                return false;
        return true;
    }

    private readonly record struct Format(int Channels, int Rate, int Bits, bool Floating)
    {
        public static string? Read(ReadOnlySpan<byte> chunk, out Format? format)
        {
            format = null;
            if (chunk.Length < 16)
                return "the WAV file is damaged: its format is incomplete";
            var tag = (int)BinaryPrimitives.ReadUInt16LittleEndian(chunk);
            // The extended form says in the first two bytes of a longer name what the plain one says at once.
            if (tag == Extensible && chunk.Length >= 40)
                tag = BinaryPrimitives.ReadUInt16LittleEndian(chunk[24..]);
            var channels = BinaryPrimitives.ReadUInt16LittleEndian(chunk[2..]);
            var rate = BinaryPrimitives.ReadUInt32LittleEndian(chunk[4..]);
            var bits = BinaryPrimitives.ReadUInt16LittleEndian(chunk[14..]);
            var readable = tag switch
            {
                WholeNumbers => bits is 8 or 16 or 24 or 32,
                FloatingPoint => bits == 32,
                _ => false,
            };
            if (!readable)
                return $"a WAV file of kind {tag} with {bits} bit; allowed are 8, 16, 24 and 32 bit whole numbers and 32 bit floating point";
            if (channels is not (1 or 2))
                return $"a WAV file of {channels} channels; allowed are one and two";
            if (rate is < (uint)Recording.LeastRate or > (uint)Recording.MostRate)
                return $"a WAV file of {rate} samples a second; allowed are {Recording.LeastRate} to {Recording.MostRate}";
            format = new(channels, (int)rate, bits, tag == FloatingPoint);
            return null;
        }
    }
}
