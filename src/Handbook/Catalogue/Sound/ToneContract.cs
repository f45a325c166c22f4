using System.Text.Json;
using Witnessmark.Handbook.Quantities;
using Witnessmark.Handbook.Sound;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The contract of <c>tone</c>.</summary>
internal static class ToneContract
{
    /// <summary>More bytes than this are refused before they are looked at: half a minute of stereo at 96 kHz and 32 bit fits.</summary>
    private const int MostBytes = 1 << 25;

    private const string BytesKind =
        "base64 of the bytes of a WAV file, or beside sampleRate of 16 bit samples (little-endian, one channel); on the command line also the path of a .wav file";

    private static readonly Input<byte[]> Samples = new("samples", BytesKind, "the recording, 0.1 s to 30 s", Bytes);
    private static readonly Input<Frequency> SampleRate = Take.Bounded<Frequency>(
            "sampleRate",
            "samples in a second, when samples are bare; a WAV file says it itself",
            b => b is >= Recording.LeastRate and <= Recording.MostRate,
            $"{Recording.LeastRate} Hz to {Recording.MostRate} Hz"
        )
        .OrNothing();
    private static readonly Input<Frequency> Min = Take.Positive<Frequency>("min", "lowest pitch in question");
    private static readonly Input<Frequency> Max = Take.Bounded<Frequency>(
        "max",
        "highest pitch in question",
        b => b is > 0 and <= Tone.HighestExpected,
        $"more than zero, at most {Tone.HighestExpected} Hz"
    );
    private static readonly Input<(Frequency Min, Frequency Max)> ExpectedRange = Take.Object(
            "expectedRange",
            "where the pitch is expected; the narrower, the more noise is kept out",
            [Min, Max],
            g => (g.Of(Min), g.Of(Max))
        )
        .OrNothing();
    private static readonly Input<Frequency> Mains = Take.Bounded<Frequency>(
            "mains",
            "frequency of a hum known to be in the recording, taken out with its multiples; left out, 50 Hz and 60 Hz are suspected",
            b => b is >= 16 and <= 400,
            "16 Hz to 400 Hz"
        )
        .OrNothing();

    public static Calculation Calculation { get; } =
        new(
            "tone",
            "Sound",
            "Pitch of a plucked belt, a spoke or an idling engine in a recording.",
            "McLeod and Wyvill, A Smarter Way to Find Pitch, ICMC 2005",
            typeof(Tone),
            [Samples, SampleRate, ExpectedRange, Mains],
            [
                new("frequency", "Hz", "the pitch"),
                new("clarity", "1", "likeness of the sound to itself one period later, up to 1"),
                new("uncertainty", "Hz", "one standard deviation of the pitch"),
                new("hum", "Hz", "mains frequency whose multiples were taken out first, where they were"),
            ],
            Hear
        );

    private static Reply Hear(Given given)
    {
        var recording = Sound(given);
        (Frequency, Frequency)? expected = null;
        if (given.Maybe(ExpectedRange) is { } range)
            expected =
                range.Min >= range.Max ? throw given.Wrong("expectedRange", "min not below max", "the ends in order")
                : range.Max > recording.Rate / 4
                    ? throw given.Wrong(
                        "expectedRange.max",
                        $"above {recording.Rate.Hertz / 4} Hz",
                        "at most a quarter of the samples in a second"
                    )
                : range;
        return Reply.To(
            Tone.In(recording, expected, given.Maybe(Mains)),
            h =>
                new Gives()
                    .With("frequency", h.Frequency, "Hz")
                    .With("clarity", h.Clarity, "1")
                    .With("uncertainty", h.Uncertainty, "Hz")
                    .With("hum", h.Hum, "Hz")
        );
    }

    private static Recording Sound(Given given)
    {
        var bytes = given.Of(Samples);
        if (WavFile.Is(bytes))
        {
            if (given.Has(SampleRate))
                throw given.Wrong(SampleRate.Name, "given beside a WAV file", "bare samples; the file has its own");
            return WavFile.Read(bytes, out var recording) is { } why
                ? throw given.Wrong(Samples.Name, why, BytesKind)
                : recording!;
        }
        if (given.Maybe(SampleRate) is not { } rate)
            throw given.Wrong(Samples.Name, "not a WAV file, and no sampleRate beside it", BytesKind);
        if (bytes.Length % 2 != 0)
            throw given.Wrong(Samples.Name, $"{bytes.Length} bytes, the last sample is incomplete", BytesKind);
        if (bytes.Length / 2 > Recording.MostSeconds * rate.Hertz)
            throw given.Wrong(Samples.Name, "a longer recording", $"at most {Recording.MostSeconds} s");
        return Recording.Of16Bit(bytes, rate);
    }

    private static byte[] Bytes(JsonElement e, string path)
    {
        if (e.ValueKind != JsonValueKind.String)
            throw new MalformedGiven(path, Given.Found(e), BytesKind);
        if (!e.TryGetBytesFromBase64(out var bytes))
            throw new MalformedGiven(path, $"{Given.Found(e)}, not base64", BytesKind);
        return bytes.Length is > 0 and <= MostBytes
            ? bytes
            : throw new MalformedGiven(path, $"{bytes.Length} bytes", $"1 to {MostBytes} bytes");
    }
}
