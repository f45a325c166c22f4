namespace Witnessmark.Doors;

/// <summary>Lines that everybody knows, and what is made by rule from very little.</summary>
/// <remarks>
/// The list is from memory and short, and by rule: no list of leaked secrets comes with the program, and it asks nobody. What leaked elsewhere and looks like none of these is
/// taken (docs/security.md, 6.2.12).
/// </remarks>
internal static class CommonPassphrase
{
    private const int FewestOfItsOwn = 8;

    // without signs and in small letters
    private static readonly string[] Known =
    [
        "correcthorsebatterystaple",
        "thequickbrownfoxjumpsoverthelazydog",
        "tobeornottobethatisthequestion",
        "maytheforcebewithyou",
        "franzjagtimkomplettverwahrlostentaxiquerdurchbayern",
    ];

    // rows of keyboards, the alphabet, and what is put round a word that is asked for
    private static readonly string[] Rows =
    [
        "abcdefghijklmnopqrstuvwxyz",
        "zyxwvutsrqponmlkjihgfedcba",
        "01234567890123456789",
        "98765432109876543210",
        "qwertyuiopasdfghjklzxcvbnm",
        "qwertzuiopasdfghjklyxcvbnm",
        "1qaz2wsx3edc4rfv5tgb6yhn7ujm",
        "qazwsxedcrfvtgbyhnujm",
    ];

    private static readonly string[] Words =
    [
        "password",
        "passphrase",
        "passwort",
        "kennwort",
        "witnessmark",
        "letmein",
        "iloveyou",
        "welcome",
        "willkommen",
        "administrator",
        "admin",
        "secret",
        "geheim",
        "workshop",
        "werkstatt",
        "motorcycle",
        "motorrad",
    ];

    /// <summary>Whether a passphrase is one, for a person of a shop.</summary>
    public static bool Is(string phrase, string person, string shop)
    {
        var bare = Bare(phrase);
        if (Known.Contains(bare))
            return true;
        var rest = bare;
        foreach (var word in (string[])[Bare(person), Bare(shop), .. Words])
            if (word.Length > 0)
                rest = rest.Replace(word, "");
        return OfItsOwn(Once(rest)) < FewestOfItsOwn;
    }

    private static string Bare(string text) => string.Concat(text.Where(char.IsLetterOrDigit)).ToLowerInvariant();

    // abcabcabc is abc
    private static string Once(string text)
    {
        for (var part = 1; part <= text.Length / 2; part++)
            if (text.Length % part == 0 && text.Select((c, i) => c == text[i % part]).All(same => same))
                return text[..part];
        return text;
    }

    // a run of a row counts as one sign
    private static int OfItsOwn(string text)
    {
        var own = 0;
        for (var at = 0; at < text.Length; own++)
            at += RunAt(text, at);
        return own;
    }

    private static int RunAt(string text, int at)
    {
        var longest = 1;
        while (
            at + longest < text.Length
            && Rows.Any(row => row.Contains(text.Substring(at, longest + 1), StringComparison.Ordinal))
        )
            longest++;
        return longest >= 4 ? longest : 1;
    }
}
