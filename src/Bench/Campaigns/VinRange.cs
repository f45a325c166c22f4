namespace Witnessmark.Bench.Campaigns;

/// <summary>
/// VINs from one to another: of the same kind and year (positions 1 to 8, 10 and 11), serial numbers in order. Position 9 is a
/// check digit in North America and says nothing of order, so it is passed over.
/// </summary>
/// <remarks><b>Source.</b> ISO 3779 (17 signs, no I, O, Q); 49 CFR 565.15: position 9 check digit, positions 12 to 17 number of the vehicle.</remarks>
public sealed record VinRange
{
    private const int Length = 17;
    private const int Serial = 11;

    private VinRange(string from, string to) => (From, To) = (from, to);

    /// <summary>The first.</summary>
    public string From { get; }

    /// <summary>The last.</summary>
    public string To { get; }

    /// <summary>Reads <c>GZ0FE64C8RH000400 to GZ0FE64C8RH000499</c>, or one VIN alone; null with the reason when it is neither.</summary>
    public static (VinRange? Range, string? Why) Read(string text)
    {
        var ends = text.Split(" to ", StringSplitOptions.TrimEntries);
        if (ends.Length > 2)
            return (null, "more than one \"to\"");
        var (from, to) = (ends[0], ends[^1]);
        if (ends.FirstOrDefault(e => !IsVin(e)) is { } wrong)
            return (null, $"\"{wrong}\" has not 17 digits and capital letters without I, O and Q");
        if (Kind(from) != Kind(to))
            return (null, "the two ends differ before their serial numbers");
        return string.CompareOrdinal(from, Serial, to, Serial, Length - Serial) > 0
            ? (null, "the ends are swapped")
            : (new(from, to), null);
    }

    /// <summary>Whether a VIN lies in it.</summary>
    public bool Holds(string vin) =>
        vin.Length == Length
        && Kind(vin) == Kind(From)
        && string.CompareOrdinal(vin, Serial, From, Serial, Length - Serial) >= 0
        && string.CompareOrdinal(vin, Serial, To, Serial, Length - Serial) <= 0;

    /// <summary>17 signs, none of them I, O or Q.</summary>
    public static bool IsVin(string text) =>
        text.Length == Length
        && text.All(c => char.IsAsciiDigit(c) || (char.IsAsciiLetterUpper(c) && c is not ('I' or 'O' or 'Q')));

    /// <inheritdoc/>
    public override string ToString() => From == To ? From : $"{From} to {To}";

    private static string Kind(string vin) => string.Concat(vin.AsSpan(0, 8), vin.AsSpan(9, 2));
}
