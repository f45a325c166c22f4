using System.Text.RegularExpressions;

namespace Witnessmark.Bench.Wording;

/// <summary>
/// A sentence as a voice should say it: units and signs behind and before numbers in words. What stands on the screen stays as it is.
/// </summary>
public static partial class ReadAloud
{
    private static readonly Dictionary<string, (string One, string Many)> Units = new(StringComparer.Ordinal)
    {
        ["mm"] = ("millimetre", "millimetres"),
        ["in"] = ("inch", "inches"),
        ["m"] = ("metre", "metres"),
        ["km"] = ("kilometre", "kilometres"),
        ["mi"] = ("mile", "miles"),
        ["L"] = ("litre", "litres"),
        ["mL"] = ("millilitre", "millilitres"),
        ["deg"] = ("degree", "degrees"),
        ["N·m"] = ("newton metre", "newton metres"),
        ["lbf·ft"] = ("pound foot", "pound feet"),
        ["lbf·in"] = ("pound inch", "pound inches"),
        ["N"] = ("newton", "newtons"),
        ["kPa"] = ("kilopascal", "kilopascals"),
        ["bar"] = ("bar", "bar"),
        ["psi"] = ("P S I", "P S I"),
        ["°C"] = ("degree Celsius", "degrees Celsius"),
        ["°F"] = ("degree Fahrenheit", "degrees Fahrenheit"),
        ["V"] = ("volt", "volts"),
        ["A"] = ("ampere", "amperes"),
        ["Ω"] = ("ohm", "ohms"),
        ["%"] = ("percent", "percent"),
        ["s"] = ("second", "seconds"),
        ["min"] = ("minute", "minutes"),
        ["g"] = ("gram", "grams"),
    };

    private static readonly (string Sign, string Words)[] Signs =
    [
        ("±", "plus or minus"),
        ("≥", "at least"),
        ("≤", "at most"),
        ("−", "minus"),
        ("½", "a half"),
        ("–", "to"),
    ];

    /// <summary><c>50 ± 1.2 mm</c> becomes <c>50 plus or minus 1.2 millimetres</c>.</summary>
    public static string Of(string sentence)
    {
        var said = Measured().Replace(sentence, Word);
        foreach (var (sign, words) in Signs)
            said = said.Replace(sign, $" {words} ", StringComparison.Ordinal);
        return Blanks().Replace(said, " ").Trim();
    }

    private static string Word(Match found)
    {
        var (number, unit) = (found.Groups["number"].Value, found.Groups["unit"].Value);
        return Units.TryGetValue(unit, out var names)
            ? $"{number} {(number == "1" ? names.One : names.Many)}"
            : found.Value;
    }

    // a whole unit and not the beginning of one; "in" with more words behind it is a word itself
    [GeneratedRegex(@"(?<number>\d+(\.\d+)?)\s?(?!in\s\p{L})(?<unit>[°%Ω\p{L}][\p{L}·/²]*)")]
    private static partial Regex Measured();

    [GeneratedRegex(@"\s{2,}")]
    private static partial Regex Blanks();
}
