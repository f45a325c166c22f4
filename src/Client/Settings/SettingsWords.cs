namespace Witnessmark.Client.Settings;

/// <summary>Words of a person's settings.</summary>
internal static class SettingsWords
{
    public const string Title = "Settings";
    public const string Hand = "Which hand holds the tool?";
    public const string LeftHand = "Left: Save and Delete stand on the right";
    public const string RightHand = "Right: Save and Delete stand on the left";
    public const string HandWhy = "The other hand types: what saves, marks and deletes stands on its side.";
    public const string Text = "Text";
    public const string Contrast = "Contrast";
    public const string Stronger = "Stronger";
    public const string StrongerIs = "Stronger is black on white or white on black, with thicker lines.";
    public const string Scheme = "Light or dark";
    public const string AsSystem = "As the system";
    public const string Light = "Light";
    public const string Dark = "Dark";
    public const string ReadBack = "Say a reading aloud when it is saved";
    public const string ReadBackWhat = "Place, value, unit and verdict. \"Say it\" at the point works in any case.";
    public const string NoVoice = "This browser has no voice.";
    public const string Awake = "Keep the screen awake at a point";
    public const string CannotKeepAwake =
        "This browser cannot keep the screen awake, or not at an address without https.";
    public const string SayIt = "Say it";

    public static readonly IReadOnlyList<(TextSize, string)> Sizes =
    [
        (TextSize.Normal, "Normal"),
        (TextSize.Large, "Large, 125 %"),
        (TextSize.Largest, "Largest, 150 %"),
    ];

    public static string Whose(string person) =>
        $"Those of {person} on this device. Others who work with it have their own.";
}
