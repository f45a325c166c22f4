using System.Text.Json.Nodes;
using Witnessmark.Handbook.Catalogue;
using Witnessmark.Handbook.Sound;
using Witnessmark.Handbook.Tests.Catalogue;

namespace Witnessmark.Handbook.Tests.Sound;

public class SoundRequestTests
{
    private const string Silence = "\"samples\":\"AAAA\"";

    [Theory]
    [InlineData("tone", """{"samples":5}""", "samples: 5")]
    [InlineData("tone", """{"samples":""}""", "samples: 0 bytes")]
    [InlineData("tone", """{"samples":"belt.wav"}""", "samples: \"belt.wav\", not base64")]
    [InlineData("tone", $$"""{{{Silence}}}""", "samples: not a WAV file, and no sampleRate beside it")]
    [InlineData(
        "tone",
        $$"""{{{Silence}},"sampleRate":"8000 Hz"}""",
        "samples: 3 bytes, the last sample is incomplete"
    )]
    [InlineData("tone", $$"""{{{Silence}},"sampleRate":"3999 Hz"}""", "sampleRate: \"3999 Hz\"; allowed:")]
    [InlineData("tone", $$"""{{{Silence}},"sampleRate":"192001 Hz"}""", "sampleRate: \"192001 Hz\"; allowed:")]
    [InlineData("belt-tension", """{"frequency":"0 Hz","freeSpan":"1 m","massPerLength":"1 kg/m"}""", "frequency")]
    [InlineData("belt-tension", """{"frequency":"9 Hz","freeSpan":"-1 m","massPerLength":"1 kg/m"}""", "freeSpan")]
    [InlineData("belt-tension", """{"frequency":"9 Hz","freeSpan":"1 m","massPerLength":"1 kg"}""", "massPerLength")]
    [InlineData("idle-speed", """{"frequency":"40 Hz","cylinders":0}""", "cylinders: 0")]
    [InlineData("idle-speed", """{"frequency":"40 Hz","cylinders":4,"strokes":3}""", "strokes: 3; allowed: 2 or 4")]
    [InlineData("idle-speed", """{"frequency":"40 Hz","cylinders":4,"firingOrder":"odd"}""", "firingOrder: \"odd\"")]
    [InlineData("idle-change", """{"before":"40 Hz"}""", "after: missing")]
    public void A_mistake_is_told_with_its_key_and_what_is_allowed(string name, string given, string told) =>
        Assert.StartsWith(told, CaseFiles.Ask(name, given).Malformed);

    [Theory]
    [InlineData("100 Hz", "100 Hz", "expectedRange: min not below max")]
    [InlineData("1500 Hz", "2001 Hz", "expectedRange.max: above 2000 Hz")]
    [InlineData("1500 Hz", "4001 Hz", "expectedRange.max: \"4001 Hz\"")]
    public void A_range_must_make_sense(string min, string max, string told) =>
        Assert.StartsWith(told, Bare(8_000, 1, new JsonObject { ["min"] = min, ["max"] = max }).Malformed);

    [Fact]
    public void Bare_samples_are_16_bit_little_endian_of_one_channel()
    {
        // 440 Hz by definition of the samples
        var outputs = Bare(8_000, 0.5, null).Outputs!;
        Assert.Equal(440, (double)outputs["frequency"]!["value"]!, 0.1);
        Assert.InRange((double)outputs["clarity"]!["value"]!, 0.999, 1);
        Assert.Equal(["frequency", "clarity", "uncertainty"], outputs.Select(o => o.Key));
    }

    [Fact]
    public void A_recording_is_at_most_half_a_minute()
    {
        Assert.StartsWith("samples: a longer recording; allowed: at most 30 s", Bare(4_000, 30.01, null).Malformed);
        Assert.Null(Bare(4_000, 30, null).Malformed);
    }

    [Fact]
    public void The_ends_of_what_may_be_given_are_heard()
    {
        Assert.Null(Bare(192_000, 0.1, new JsonObject { ["min"] = "400 Hz", ["max"] = "4000 Hz" }).Malformed);
        Assert.Null(Bare(8_000, 0.1, new JsonObject { ["min"] = "400 Hz", ["max"] = "2000 Hz" }).Malformed);
    }

    [Theory]
    [InlineData("16 Hz", true)]
    [InlineData("15.9 Hz", false)]
    [InlineData("400 Hz", true)]
    [InlineData("401 Hz", false)]
    public void Mains_run_from_16_to_400_Hz(string mains, bool allowed) =>
        Assert.Equal(
            allowed,
            CaseFiles.Ask("tone", $$"""{"samples":"AAAAAA==","sampleRate":"8000 Hz","mains":"{{mains}}"}""").Malformed
                is null
        );

    [Fact]
    public void A_recording_too_short_for_what_is_expected_is_refused()
    {
        var range = new JsonObject { ["min"] = "100 Hz", ["max"] = "800 Hz" };
        Assert.Equal("noClearTone", Bare(8_000, 0.099, (JsonObject)range.DeepClone()).Refusal!.Key);
        Assert.Null(Bare(8_000, 0.1, (JsonObject)range.DeepClone()).Refusal);
        range["min"] = "59 Hz"; // six periods last 0.1017 s
        Assert.Equal("noClearTone", Bare(8_000, 0.101, range).Refusal!.Key);
    }

    [Fact]
    public void Silence_has_no_tone() =>
        Assert.Equal("noClearTone", Tone.In(new(new double[8_000], new(8_000))).Refusal!.Key);

    [Fact]
    public void Hum_alone_is_no_tone() =>
        Assert.Equal(
            "noClearTone",
            Tone.In(new SoundMaker(1).Steady(50, 1, 0, 0.5).NoiseOf(0.1).Recording).Refusal!.Key
        );

    [Fact]
    public void A_tone_above_the_expected_range_is_not_taken_for_its_fourth_part() =>
        Assert.Equal(
            "noClearTone",
            Tone.In(new SoundMaker(2).Steady(410, 1).Recording, (new(70), new(130))).Refusal!.Key
        );

    [Fact]
    public void A_caller_who_keeps_no_bounds_has_a_bug()
    {
        var sound = new SoundMaker(3, 1, 8_000).Steady(100, 1).Recording;
        Assert.Throws<ArgumentException>(() => Tone.In(sound, (new(0), new(100))));
        Assert.Throws<ArgumentException>(() => Tone.In(sound, (new(100), new(100))));
        Assert.Throws<ArgumentException>(() => Tone.In(sound, (new(100), new(2_001))));
        Assert.Throws<ArgumentException>(() => Tone.In(new(new double[9], new(3_999))));
        Assert.Throws<ArgumentException>(() => Tone.In(new(new double[9], new(192_001))));
        Assert.Throws<ArgumentException>(() => Tone.In(new(new double[31 * 4_000], new(4_000))));
        Assert.Throws<ArgumentOutOfRangeException>(() => sound.Thinned(0));
        Assert.Throws<ArgumentException>(() => Recording.Of16Bit([1], new(8_000)));
    }

    private static Reply Bare(int rate, double seconds, JsonObject? range)
    {
        var bytes = new byte[2 * (int)Math.Round(rate * seconds)];
        for (var i = 0; i < bytes.Length / 2; i++)
        {
            var sample = (short)(10_000 * Math.Sin(2 * Math.PI * 440 * i / rate));
            (bytes[2 * i], bytes[2 * i + 1]) = ((byte)sample, (byte)(sample >> 8));
        }
        var given = new JsonObject { ["samples"] = Convert.ToBase64String(bytes), ["sampleRate"] = $"{rate} Hz" };
        if (range is not null)
            given["expectedRange"] = range;
        return CaseFiles.Ask("tone", given.ToJsonString());
    }
}
