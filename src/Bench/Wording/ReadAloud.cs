using System.Text.RegularExpressions;

namespace Witnessmark.Bench.Wording;

/// <summary>
/// A sentence as a voice should say it: units and signs behind and before numbers in words. What stands on the screen stays as it is.
/// </summary>
public static partial class ReadAloud
{
    private static readonly (string Sign, Func<Sentence> Words)[] Signs =
    [
        ("±", () => $"plus or minus"),
        ("≥", () => $"at least"),
        ("≤", () => $"at most"),
        ("−", () => $"minus"),
        ("½", () => $"a half"),
        ("–", () => $"to"),
    ];

    /// <summary><c>50 ± 1.2 mm</c> becomes <c>50 plus or minus 1.2 millimetres</c>.</summary>
    /// <param name="sentence">As it stands on the screen, in that language.</param>
    /// <param name="tongue">The language.</param>
    public static string Of(string sentence, Tongue tongue)
    {
        var said = Measured().Replace(sentence, found => Word(found, tongue));
        foreach (var (sign, words) in Signs)
            said = said.Replace(sign, $" {words().In(tongue)} ", StringComparison.Ordinal);
        return Blanks().Replace(said, _ => " ").Trim();
    }

    private static string Word(Match found, Tongue tongue)
    {
        var (number, unit) = (found.Groups["number"].Value, found.Groups["unit"].Value);
        return Unit(unit, number == "1") is { } word ? $"{number} {word.In(tongue)}" : found.Value;
    }

    private static Sentence? Unit(string symbol, bool one) =>
        symbol switch
        {
            "mm" => one ? (Sentence)$"millimetre" : (Sentence)$"millimetres",
            "in" => one ? (Sentence)$"inch" : (Sentence)$"inches",
            "m" => one ? (Sentence)$"metre" : (Sentence)$"metres",
            "km" => one ? (Sentence)$"kilometre" : (Sentence)$"kilometres",
            "mi" => one ? (Sentence)$"mile" : (Sentence)$"miles",
            "L" => one ? (Sentence)$"litre" : (Sentence)$"litres",
            "mL" => one ? (Sentence)$"millilitre" : (Sentence)$"millilitres",
            "deg" => one ? (Sentence)$"degree" : (Sentence)$"degrees",
            "N·m" => one ? (Sentence)$"newton metre" : (Sentence)$"newton metres",
            "lbf·ft" => one ? (Sentence)$"pound foot" : (Sentence)$"pound feet",
            "lbf·in" => one ? (Sentence)$"pound inch" : (Sentence)$"pound inches",
            "N" => one ? (Sentence)$"newton" : (Sentence)$"newtons",
            "kPa" => one ? (Sentence)$"kilopascal" : (Sentence)$"kilopascals",
            "bar" => $"bar",
            "psi" => $"P S I",
            "°C" => one ? (Sentence)$"degree Celsius" : (Sentence)$"degrees Celsius",
            "°F" => one ? (Sentence)$"degree Fahrenheit" : (Sentence)$"degrees Fahrenheit",
            "V" => one ? (Sentence)$"volt" : (Sentence)$"volts",
            "A" => one ? (Sentence)$"ampere" : (Sentence)$"amperes",
            "Ω" => one ? (Sentence)$"ohm" : (Sentence)$"ohms",
            "%" => $"percent",
            "s" => one ? (Sentence)$"second" : (Sentence)$"seconds",
            "min" => one ? (Sentence)$"minute" : (Sentence)$"minutes",
            "g" => one ? (Sentence)$"gram" : (Sentence)$"grams",
            _ => null,
        };

    // a whole unit and not the beginning of one; "in" with more words behind it is a word itself
    [GeneratedRegex(@"(?<number>\d+([.,]\d+)?)\s?(?!in\s\p{L})(?<unit>[°%Ω\p{L}][\p{L}·/²]*)")]
    private static partial Regex Measured();

    [GeneratedRegex(@"\s{2,}")]
    private static partial Regex Blanks();
}
