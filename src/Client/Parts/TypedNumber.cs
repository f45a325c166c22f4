using System.Globalization;

namespace Witnessmark.Client.Parts;

/// <summary>What a key leads to.</summary>
/// <param name="Text">What stands in the box now, always with a point.</param>
/// <param name="Said">What is said when the key could not be taken, or null.</param>
internal sealed record Typed(string Text, string? Said = null);

/// <summary>The rules of our own keypad: what cannot be is stopped at the key and said, and nothing that was typed is lost.</summary>
internal static class TypedNumber
{
    public const char Delete = '\b';

    /// <summary>Takes one key: a digit, point, comma, minus or <see cref="Delete"/>.</summary>
    public static Typed Press(string text, char key, KeyRules rules) =>
        key switch
        {
            Delete => new(text.Length == 0 ? text : Trimmed(text[..^1])),
            '.' or ',' => Point(text, rules),
            '-' or '−' => Minus(text, rules),
            >= '0' and <= '9' => Digit(text, key, rules),
            _ => new(text, PartsWords.NoSuchKey(key)),
        };

    /// <summary>One step of the instrument more or less.</summary>
    public static Typed Nudged(string text, decimal step, int way, KeyRules rules)
    {
        if (!decimal.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var value))
            return new(text, PartsWords.TypeFirst);
        var nudged = value + way * step;
        return nudged < 0 && !rules.Minus
            ? new(text, PartsWords.NoMinus)
            : new(nudged.ToString(CultureInfo.InvariantCulture));
    }

    /// <summary>Whether it can be taken as a number: not empty, no lone minus, no point without digits after it.</summary>
    public static bool Stands(string text) => text.Length > 0 && char.IsAsciiDigit(text[^1]);

    private static Typed Point(string text, KeyRules rules)
    {
        if (rules.Plain || rules.Decimals == 0)
            return new(text, PartsWords.WholeOnly(rules.DecimalsBecause));
        if (text.Contains('.'))
            return new(text, PartsWords.PointThere(Digits(text)));
        return new(text is "" or "-" ? text + "0." : text + ".");
    }

    private static Typed Minus(string text, KeyRules rules)
    {
        if (!rules.Minus)
            return new(text, PartsWords.NoMinus);
        return new(text.StartsWith('-') ? text[1..] : "-" + text);
    }

    private static Typed Digit(string text, char key, KeyRules rules)
    {
        if (text.Count(char.IsAsciiDigit) >= rules.Digits)
            return new(text, PartsWords.TooLong(rules.Digits));
        if (!rules.Plain && (text is "0" or "-0"))
            return new(text[..^1] + key);
        var point = text.IndexOf('.');
        if (point >= 0 && text.Length - point - 1 >= rules.Decimals)
            return new(text, PartsWords.TooFine(rules.DecimalsBecause, rules.Decimals));
        return new(text + key);
    }

    private static string Trimmed(string text) => text == "-" ? "" : text;
}
