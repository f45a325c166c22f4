using Witnessmark.Handbook;
using Witnessmark.Handbook.Sound;

namespace Witnessmark.Bench.Listening;

/// <summary>What was heard in one stretch of sound: how loud, how high, or why that cannot be told.</summary>
/// <param name="Level">How loud it was.</param>
/// <param name="Pitch">The pitch, or the refusal.</param>
/// <param name="Spectrum">For the drawing.</param>
public sealed record Listened(SoundLevel Level, Answer<Heard> Pitch, SoundSpectrum Spectrum)
{
    /// <summary>Judges a stretch of sound.</summary>
    public static Listened To(Recording sound, PitchRange range)
    {
        var level = SoundLevel.Of(sound.Samples);
        var spectrum = SoundSpectrum.Of(sound, range);
        if (level.Loudness == Loudness.TooQuiet)
            return new(level, Quiet(), spectrum);
        if (range.Max.Hertz > sound.Rate.Hertz / 4)
            return new(level, TooSlow(sound, range), spectrum);
        return new(level, Tone.In(sound, (range.Min, range.Max)), spectrum);
    }

    private static Answer<Heard> Quiet() =>
        Answer<Heard>.Refuse(
            "tooQuiet",
            $"Too quiet: nothing is heard. Come closer with the microphone, then once more."
        );

    private static Answer<Heard> TooSlow(Recording sound, PitchRange range) =>
        Answer<Heard>.Refuse(
            "tooSlow",
            $"This device hears up to {Wording.Numerals.Plain(sound.Rate.Hertz / 4, 0)} Hz only, and here a tone may be as high as {Wording.Numerals.Plain(range.Max.Hertz, 0)} Hz."
        );
}
