namespace Witnessmark.Client.Parts;

/// <summary>Words of the small parts: keypad, strip, saving.</summary>
internal static class PartsWords
{
    public static string TypeFirst => Say($"Type a value first.");
    public static string NoMinus => Say($"This cannot be less than nothing.");
    public static string Keypad => Say($"Keypad");
    public static string Main => Say($"Main");
    public static string OfWorkshop => Say($"workshop's, not the maker's");
    public static string OfPractice => Say($"common practice, not the maker's");
    public static string Delete => Say($"Delete");
    public static string Point => Say($"Decimal point");
    public static string Minus => Say($"Minus");
    public static string Today => Say($"Today");
    public static string Machines => Say($"Machines");
    public static string Figures => Say($"Figures");
    public static string Shelf => Say($"Shelf");
    public static string Handbook => Say($"Handbook");
    public static string Device => Say($"This device");
    public static string Working => Say($"Show the working");
    public static string SkipToMain => Say($"To the content");

    public static string NoSuchKey(char key) => Say($"\"{key}\" cannot be typed here.");

    public static string WholeOnly(string who) => Say($"{who}: whole numbers only.");

    public static string PointThere(string text) => Say($"There is a decimal point already: {text}");

    public static string TooLong(int digits) => Say($"At most {digits} digits.");

    public static string TooFine(string who, int decimals) =>
        Say(
            Sentence.Count(
                decimals,
                $"{who}: no more than one digit after the point.",
                $"{who}: no more than {decimals} digits after the point."
            )
        );

    public static string More(string step) => Say($"{step} more");

    public static string Less(string step) => Say($"{step} less");

    public static string Of(int at, int all) => Say(((Sentence)$"{at} of {all}").Meaning("place in a row"));
}
