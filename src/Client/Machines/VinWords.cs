using Witnessmark.Handbook.Identity;

namespace Witnessmark.Client.Machines;

/// <summary>What a VIN that was typed, scanned or seen says of itself.</summary>
internal static class VinWords
{
    private const int Signs = 17;

    /// <summary>
    /// The number in what a bar code says: labels may carry a letter I before it, which no VIN has (AIAG B-2, from memory). Anything else as it is.
    /// </summary>
    public static string Cleaned(string code)
    {
        var text = code.Trim().ToUpperInvariant();
        return text.Length == Signs + 1 && text[0] == 'I' && Vin.Read(text[1..]) is not null ? text[1..] : text;
    }

    /// <summary>Whether the check digit speaks for the reading; null when it is no VIN.</summary>
    public static string? CheckOf(string text) =>
        text.Trim() is { Length: Signs } number
            ? Vin.Read(number) switch
            {
                null => Say($"17 signs, but no VIN: it has digits and letters, never I, O or Q."),
                { CheckDigitMatches: true } => Say(
                    $"A VIN, and its check digit fits: it was read right, as far as that can tell."
                ),
                _ => Say(
                    $"A VIN whose check digit does not fit: read it again. Only North America asks for one, so it may be right all the same."
                ),
            }
            : null;
}
