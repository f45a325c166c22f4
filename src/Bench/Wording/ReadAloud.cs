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
        return Blanks().Replace(said, " ").Trim();
    }

    private static string Word(Match found, Tongue tongue)
    {
        var (number, unit) = (found.Groups["number"].Value, found.Groups["unit"].Value);
        return Unit(unit, number == "1") is { } word ? $"{number} {word.In(tongue)}" : found.Value;
    }

    private static Sentence? Unit(string symbol, bool one) =>
        symbol switch
        {
            "mm" => one ? $"millimetre" : $"millimetres",
            "in" => one ? $"inch" : $"inches",
            "m" => one ? $"metre" : $"metres",
            "km" => one ? $"kilometre" : $"kilometres",
            "mi" => one ? $"mile" : $"miles",
            "L" => one ? $"litre" : $"litres",
            "mL" => one ? $"millilitre" : $"millilitres",
            "deg" => one ? $"degree" : $"degrees",
            "N·m" => one ? $"newton metre" : $"newton metres",
            "lbf·ft" => one ? $"pound foot" : $"pound feet",
            "lbf·in" => one ? $"pound inch" : $"pound inches",
            "N" => one ? $"newton" : $"newtons",
            "kPa" => one ? $"kilopascal" : $"kilopascals",
            "bar" => $"bar",
            "psi" => $"P S I",
            "°C" => one ? $"degree Celsius" : $"degrees Celsius",
            "°F" => one ? $"degree Fahrenheit" : $"degrees Fahrenheit",
            "V" => one ? $"volt" : $"volts",
            "A" => one ? $"ampere" : $"amperes",
            "Ω" => one ? $"ohm" : $"ohms",
            "%" => $"percent",
            "s" => one ? $"second" : $"seconds",
            "min" => one ? $"minute" : $"minutes",
            "g" => one ? $"gram" : $"grams",
            _ => null,
        };

    // a whole unit and not the beginning of one; "in" with more words behind it is a word itself
    [GeneratedRegex(@"(?<number>\d+([.,]\d+)?)\s?(?!in\s\p{L})(?<unit>[°%Ω\p{L}][\p{L}·/²]*)")]
    private static partial Regex Measured();

    [GeneratedRegex(@"\s{2,}")]
    private static partial Regex Blanks();
}
