namespace Witnessmark.Client.Parts;

/// <summary>Words of the small parts: keypad, strip, saving.</summary>
internal static class PartsWords
{
    public const string TypeFirst = "Type a value first.";
    public const string NoMinus = "This cannot be less than nothing.";
    public const string Delete = "Delete";
    public const string Point = "Decimal point";
    public const string Minus = "Minus";
    public const string Today = "Today";
    public const string Machines = "Machines";
    public const string Figures = "Figures";
    public const string Shelf = "Shelf";
    public const string Handbook = "Handbook";
    public const string Device = "This device";
    public const string Working = "Show the working";
    public const string SkipToMain = "To the content";

    public static string NoSuchKey(char key) => $"\"{key}\" cannot be typed here.";

    public static string WholeOnly(string who) => $"{who}: whole numbers only.";

    public static string PointThere(string text) => $"There is a decimal point already: {text}";

    public static string TooLong(int digits) => $"At most {digits} digits.";

    public static string TooFine(string who, int decimals) =>
        decimals == 1
            ? $"{who}: no more than one digit after the point."
            : $"{who}: no more than {decimals} digits after the point.";

    public static string More(string step) => $"{step} more";

    public static string Less(string step) => $"{step} less";

    public static string Of(int at, int all) => $"{at} of {all}";
}
