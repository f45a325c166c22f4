using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Client.Settings;

/// <summary>Words of a person's settings.</summary>
internal static class SettingsWords
{
    public static string Title => Say($"Settings");
    public static string Language => Say($"Language");
    public static string NoLanguage =>
        Say($"Its texts are not on this device yet and cannot be fetched now. Until then it speaks English.");
    public static string Units => Say($"Units");
    public static string UnitsWhy =>
        Say(
            $"How quantities are shown; in brackets as they were read. What is typed keeps the unit of its instrument."
        );
    public static string Hand => Say($"Which hand holds the tool?");
    public static string LeftHand => Say($"Left: Save and Delete stand on the right");
    public static string RightHand => Say($"Right: Save and Delete stand on the left");
    public static string HandWhy => Say($"The other hand types: what saves, marks and deletes stands on its side.");
    public static string Text => Say($"Text");
    public static string Contrast => Say($"Contrast");
    public static string Stronger => Say($"Stronger");
    public static string StrongerIs => Say($"Stronger is black on white or white on black, with thicker lines.");
    public static string Scheme => Say($"Light or dark");
    public static string AsSystem => Say($"As the system");
    public static string Light => Say($"Light");
    public static string Dark => Say($"Dark");
    public static string ReadBack => Say($"Say a reading aloud when it is saved");
    public static string ReadBackWhat =>
        Say($"Place, value, unit and verdict. \"Say it\" at the point works in any case.");
    public static string NoVoice => Say($"This browser has no voice.");
    public static string Awake => Say($"Keep the screen awake at a point");
    public static string CannotKeepAwake =>
        Say($"This browser cannot keep the screen awake, or not at an address without https.");
    public static string SayIt => Say($"Say it");

    public static IReadOnlyList<(UnitSystem, string)> Systems =>
        [
            (UnitSystem.AsWritten, Say($"As they were read")),
            (UnitSystem.Metric, Say($"Metric: mm, N·m, km, kPa")),
            (UnitSystem.UsCustomary, Say($"US: in, lbf·ft, mi, psi")),
        ];

    public static IReadOnlyList<(TextSize, string)> Sizes =>
        [
            (TextSize.Normal, Say($"Normal")),
            (TextSize.Large, Say($"Large, 125 %")),
            (TextSize.Largest, Say($"Largest, 150 %")),
        ];

    public static string Whose(string person) =>
        Say($"Those of {person} on this device. Others who work with it have their own.");
}
