using Witnessmark.Handbook.ReferenceData;

namespace Witnessmark.Handbook.Identity;

/// <summary>What a vehicle identification number says of itself: form, check digit, model years, manufacturer.</summary>
/// <remarks>
/// <para><b>Formula.</b> Letters count A1 … H8, J1 … N5 P7 R9, S2 … Z9, digits as themselves; weights 8 7 6 5 4 3 2 10 0 9 8 7 6 5 4 3 2;
/// the weighted sum modulo 11, with X for 10, is the check digit and stands at position 9. The year letter stands at
/// position 10 and comes round every 30 years. A 9 at position 3: small manufacturer, named by positions 1–3 and 12–14.</para>
/// <para><b>Units.</b> None; positions count from 1; years are calendar years of the model.</para>
/// <para><b>Source.</b> 49 CFR 565.15 (tables III to VII; position 3 in (a)); its own sample 1G4AH59H45G118341 is a test case.
/// ISO 3779 asks for no check digit and no year letter (from memory).</para>
/// <para><b>Valid when</b> the number has 17 characters (from 1981). The check digit cannot see two characters of equal value
/// exchanged for one another (A, J and 1; B, K, S and 2; and so on). Both years are given because the rule that tells them
/// apart by position 7 does not cover motorcycles.</para>
/// </remarks>
public static class Vin
{
    private static readonly Dictionary<char, int> Values = PublishedTable
        .Read("vin-characters.csv")
        .Rows.ToDictionary(r => r["character"][0], r => (int)r.Number("value"));

    private static readonly int[] Weights =
    [
        .. PublishedTable.Read("vin-weights.csv").Rows.Select(r => (int)r.Number("weight")),
    ];

    private static readonly Dictionary<char, int[]> Years = PublishedTable
        .Read("vin-model-years.csv")
        .Rows.ToDictionary(r => r["character"][0], r => (int[])[(int)r.Number("first"), (int)r.Number("second")]);

    /// <summary>Reads a number; letters may be small.</summary>
    /// <param name="written">As stamped or typed, without blanks.</param>
    /// <param name="region">Where the machine was made for.</param>
    /// <returns>The reading, or null when the number is not well formed: 17 characters, no I, O or Q.</returns>
    public static VinReading? Read(string written, VinRegion region = VinRegion.Elsewhere)
    {
        if (written.Length != Weights.Length)
            return null;
        var vin = string.Concat(written.Select(Capital));
        if (!vin.All(Values.ContainsKey))
            return null;
        var check = CheckDigit(vin);
        var small = vin[2] == '9';
        return new(
            check,
            check == vin[8],
            ModelYears(vin[9]),
            small ? vin[..3] + vin[11..14] : vin[..3],
            small,
            check != vin[8] && region == VinRegion.Elsewhere
                ? (Sentence)
                    $"The check digit does not fit. Outside North America none is required, so this is no fault by itself; compare with the papers."
                : null
        );
    }

    private static char CheckDigit(string vin) => "0123456789X"[vin.Zip(Weights, (c, w) => Values[c] * w).Sum() % 11];

    private static IReadOnlyList<int> ModelYears(char letter) => Years.GetValueOrDefault(letter, []);

    // Only the letters of the alphabet of numbers: other scripts have small letters whose capitals are these
    private static char Capital(char c) => char.IsAsciiLetterLower(c) ? (char)(c - 'a' + 'A') : c;
}

/// <summary>Where a machine was made for.</summary>
public enum VinRegion
{
    /// <summary>No check digit is required.</summary>
    Elsewhere,

    /// <summary>The check digit is required by law.</summary>
    NorthAmerica,
}

/// <summary>What a well-formed number says.</summary>
/// <param name="CheckDigit">As calculated, a digit or X.</param>
/// <param name="CheckDigitMatches">Whether it stands at position 9.</param>
/// <param name="ModelYears">Both years of the 30-year pair, or none when position 10 is no year letter.</param>
/// <param name="ManufacturerCode">Three characters, six for a small manufacturer.</param>
/// <param name="SmallManufacturer">Whether position 3 is a 9.</param>
/// <param name="Note">What to make of a check digit that does not fit, or null.</param>
public sealed record VinReading(
    char CheckDigit,
    bool CheckDigitMatches,
    IReadOnlyList<int> ModelYears,
    string ManufacturerCode,
    bool SmallManufacturer,
    Sentence? Note
);
