namespace Witnessmark.Doors;

/// <summary>What is good enough as a secret: six digits, or for a lead a passphrase.</summary>
/// <remarks>
/// <b>Source.</b> NIST SP 800-63B-4, 3.1.1.2: a password alone has at least 15 characters, at least 64 are taken, none is asked to be of certain kinds,
/// and common ones are refused. Six digits are less than that, and by its letter too short for a secret that the shop checks; they are taken because they count only together with
/// the key of a device that was let in (docs/security.md, the gaps on purpose). The list of common digits is from memory and by rule.
/// </remarks>
public static class SecretRules
{
    /// <summary>Digits of a technician's secret.</summary>
    public const int PinDigits = 6;

    /// <summary>The fewest characters of a lead's secret.</summary>
    public const int ShortestPassphrase = 15;

    /// <summary>The most: longer ones only cost time.</summary>
    public const int LongestPassphrase = 200;

    // often chosen, and by no rule below; from memory, no source
    private static readonly HashSet<string> Common =
    [
        "112233",
        "159753",
        "147258",
        "258456",
        "789456",
        "142536",
        "102030",
        "007007",
        "131313",
        "696969",
    ];

    /// <summary>Why a secret is not good enough for a role and a person of a shop; null when it is.</summary>
    public static Sentence? Refuses(string secret, Role role, string person, string shop) =>
        role == Role.Lead ? RefusesPassphrase(secret, person, shop) : RefusesPin(secret);

    private static Sentence? RefusesPin(string pin) =>
        pin.Length != PinDigits || !pin.All(char.IsAsciiDigit) ? (Sentence)$"It has to be {PinDigits} digits."
        : IsCommon(pin) ? (Sentence)$"Too many people choose these digits, so they are tried first. Take others."
        : null;

    private static Sentence? RefusesPassphrase(string phrase, string person, string shop) =>
        phrase.Length < ShortestPassphrase
            ? (Sentence)
                $"It has {phrase.Length} characters; a passphrase of a lead has at least {ShortestPassphrase}. Several words are easy to keep in mind."
        : phrase.Length > LongestPassphrase
            ? (Sentence)$"It has {phrase.Length} characters; at most {LongestPassphrase} are taken."
        : CommonPassphrase.Is(phrase, person, shop)
            ? (Sentence)$"It is among those that are tried first. Take several words of your own."
        : phrase.Distinct().Count() < 5 ? (Sentence)$"It repeats the same few characters. Take several words."
        : phrase.Replace(" ", "").Equals(person.Replace(" ", ""), StringComparison.OrdinalIgnoreCase)
            ? (Sentence)$"It is only your name. Take several words."
        : null;

    private static bool IsCommon(string pin) =>
        Common.Contains(pin) || Repeats(pin, 1) || Repeats(pin, 2) || Repeats(pin, 3) || HasOneStep(pin);

    private static bool Repeats(string pin, int part) => pin.All((d, i) => d == pin[i % part]);

    // 123456, 135791, 098765: counting up or down by the same step
    private static bool HasOneStep(string pin) =>
        pin.Zip(pin.Skip(1), (a, b) => (b - a + 10) % 10).Distinct().Count() == 1;

    private static bool All(this string text, Func<char, int, bool> holds) => !text.Where((c, i) => !holds(c, i)).Any();
}
