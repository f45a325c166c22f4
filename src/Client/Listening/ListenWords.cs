using Witnessmark.Bench.Listening;

namespace Witnessmark.Client.Listening;

/// <summary>Words of the screen that listens.</summary>
internal static class ListenWords
{
    public static string Listen => Say($"Listen with the microphone");
    public static string Title => Say($"Listen");
    public static string Begin => Say($"Use the microphone");
    public static string Again => Say($"Listen again");
    public static string KeepPitch => Say($"Keep this pitch");
    public static string ForgetPitches => Say($"Begin a new side");
    public static string Cancel => Say($"Back");
    public static string Level => Say($"Level");
    public static string Pitch => Say($"Pitch now");
    public static string Held => Say($"Heard");
    public static string NoneYet => Say($"–");
    public static string Waiting => Say($"Listening. Nothing clear was heard yet.");
    public static string Evened =>
        Say($"This browser evens the sound out although it was asked not to: short tones may be cut off.");
    public static string WhyTitle => Say($"Why the microphone is wanted");
    public static string Nothing =>
        Say(
            $"Nothing is recorded and nothing is sent: the last seconds stand in this device's memory and go when you leave this screen. Only the number that you take over is written into the job, with its uncertainty."
        );
    public static string Asks => Say($"The browser asks you first. You may say no and type the reading instead.");
    public static string Cylinders => Say($"Cylinders that fire one after the other");
    public static string Even => Say($"Even intervals");
    public static string Uneven => Say($"Uneven intervals");
    public static string FourStroke => Say($"Four-stroke");
    public static string TwoStroke => Say($"Two-stroke");
    public static string Span => Say($"Free span of the belt, mm");
    public static string Mass => Say($"Mass of the belt for each metre, kg/m");
    public static string Clearness => Say($"Clarity");
    public static string ComparedNothing =>
        Say($"These pitches are for comparing. Nothing is kept of them: answer the questions of the point yourself.");

    public static string Why(PitchUse use) =>
        use switch
        {
            PitchUse.EngineSpeed => Say($"To hear the pitch of the exhaust and count the engine's speed from it."),
            PitchUse.Tension => Say($"To hear the pitch of the plucked belt and count its tension from it."),
            PitchUse.Compare => Say($"To hear the pitch of each spoke, so that you can see which one differs."),
            _ => Say($"To hear the pitch of what is plucked and take it over as the reading."),
        };

    public static string How(PitchUse use) =>
        use switch
        {
            PitchUse.EngineSpeed => Say($"A step from the silencer, never in its stream. Let it idle evenly."),
            PitchUse.Compare => Say(
                $"A hand's breadth from the spoke. Tap it, wait, keep its pitch, then the next one."
            ),
            _ => Say($"A finger's width from the belt, not touching. Pluck, wait, pluck again until the pitch stands."),
        };

    public static string Loud(Loudness loudness) =>
        loudness switch
        {
            Loudness.TooQuiet => Say($"Too quiet"),
            Loudness.Clipping => Say($"Too loud: hold it farther away"),
            _ => Say($"Good"),
        };

    public static string Take(PitchReading reading) => Say($"Take {reading.Shown} over");

    public static string KeptAs(int place, string pitch) => Say($"{place}: {pitch}");

    public static string Spread(ComparedPitches compared) =>
        Say(
            $"The lowest is number {compared.Lowest}, the highest number {compared.Highest}. Of equal spokes the lowest has {Witnessmark.Bench.Wording.Numerals.Plain(100 * compared.LeastShare!.Value, 0)} % of the tension of the highest."
        );

    public static string Missing(PitchUse use) =>
        use == PitchUse.Tension
            ? Say($"Type the span and the mass first.")
            : Say($"Say how many cylinders fire, how, and how many strokes it has.");

    public static string SpectrumSays(SoundSpectrum spectrum) =>
        spectrum.Strongest is { } strongest
            ? Say($"Spectrum up to {spectrum.High:0} Hz, strongest near {strongest:0} Hz")
            : Say($"Spectrum: nothing to hear");

    /// <summary>What is in the way, in words, and what to do.</summary>
    public static string InTheWay(string why) =>
        why switch
        {
            "insecure" => Say(
                $"A browser gives the microphone only to a page that came by HTTPS. Open the shop's secure address, or type the reading."
            ),
            "none" => Say($"This browser has no microphone that a page could use. Type the reading."),
            "NotAllowedError" => Say(
                $"The microphone was refused. Allow it for this page in the browser's settings, or type the reading."
            ),
            "NotFoundError" => Say($"This device has no microphone. Plug one in, or type the reading."),
            "NotReadableError" => Say(
                $"Another program holds the microphone. Close it and try again, or type the reading."
            ),
            "ended" => Say($"The microphone went away while it was listened to. Try again, or type the reading."),
            _ => Say($"The microphone does not work: {why}. Type the reading."),
        };
}
