using System.Text.Json.Nodes;
using Witnessmark.Handbook.Catalogue;
using Witnessmark.Handbook.Sound;
using Witnessmark.Handbook.Tests.Catalogue;

namespace Witnessmark.Handbook.Tests.Sound;

// The pitch is what SoX was told to make: ReferenceData/sound/PROVENANCE.md
public class MadeSoundsTests
{
    [Theory]
    [InlineData("pluck-82.41.wav", 82.41)]
    [InlineData("pluck-82.41-hum-noise.wav", 82.41)]
    [InlineData("saw-24-stereo.wav", 33.3)]
    [InlineData("triangle-float.wav", 440)]
    [InlineData("square-8.wav", 120)]
    [InlineData("sine-32.wav", 261.63)]
    public void A_sound_made_by_another_program_has_the_pitch_it_was_made_with(string file, double pitch)
    {
        var reply = Ask(Bytes(file), $$"""{"min":"{{(int)(pitch / 2)}} Hz","max":"{{(int)(pitch * 2)}} Hz"}""");
        Assert.InRange((double)reply.Outputs!["frequency"]!["value"]! / pitch, 0.995, 1.005);
    }

    [Fact]
    public void Every_form_of_sample_is_read_at_its_size()
    {
        // Root mean square after gain −6 dB: sine 0.5012/√2, triangle and sawtooth 0.5012/√3, square 0.5012
        Assert.Equal(0.5012 / Math.Sqrt(2), Size("sine-32.wav"), 1e-3);
        Assert.Equal(0.5012 / Math.Sqrt(3), Size("triangle-float.wav"), 1e-3);
        Assert.Equal(0.5012 / Math.Sqrt(3), Size("saw-24-stereo.wav"), 2e-3);
        Assert.Equal(0.5012, Size("square-8.wav"), 2e-3);
    }

    [Fact]
    public void A_file_cut_short_is_told_wherever_it_is_cut()
    {
        var whole = Bytes("sine-32.wav");
        for (var length = 0; length < whole.Length; length += length < 100 ? 1 : 997)
            Assert.NotNull(WavFile.Read(whole[..length], out _));
        Assert.Null(WavFile.Read(whole, out _));
    }

    [Fact]
    public void A_damaged_head_is_told_or_read_but_never_a_crash()
    {
        var whole = Bytes("saw-24-stereo.wav");
        for (var at = 0; at < 90; at++)
            foreach (var value in (byte[])[0, 1, 127, 255])
            {
                byte[] damaged = [.. whole];
                damaged[at] = value;
                var why = WavFile.Read(damaged, out var sound);
                Assert.Equal(why is null, sound is not null);
            }
    }

    private static double Size(string file)
    {
        Assert.Null(WavFile.Read(Bytes(file), out var sound));
        return Math.Sqrt(sound!.Samples.Sum(x => x * x) / sound.Samples.Length);
    }

    private static byte[] Bytes(string file) =>
        File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "ReferenceData", "sound", file));

    private static Reply Ask(byte[] samples, string range) =>
        CaseFiles.Ask(
            "tone",
            new JsonObject
            {
                ["samples"] = Convert.ToBase64String(samples),
                ["expectedRange"] = JsonNode.Parse(range),
                ["mains"] = "50 Hz",
            }.ToJsonString()
        );
}
