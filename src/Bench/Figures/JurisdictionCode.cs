namespace Witnessmark.Bench.Figures;

/// <summary>The place whose law counts, by its code.</summary>
/// <remarks>
/// <para><b>Source.</b> ISO 3166-1: the officially assigned codes of two letters, as the IANA time zone database lists them (iso3166.tab,
/// current as of ISO/TC 46 N1108, 2023-04-05), and EU, which ISO reserves for the European Union. ISO 3166-2: country, hyphen, one to three
/// letters or digits; that form is checked, not whether the country has such a part.</para>
/// </remarks>
public static class JurisdictionCode
{
    private const string Codes =
        "AD AE AF AG AI AL AM AO AQ AR AS AT AU AW AX AZ BA BB BD BE BF BG BH BI BJ BL BM BN BO BQ BR BS BT BV BW BY "
        + "BZ CA CC CD CF CG CH CI CK CL CM CN CO CR CU CV CW CX CY CZ DE DJ DK DM DO DZ EC EE EG EH ER ES ET EU FI FJ FK "
        + "FM FO FR GA GB GD GE GF GG GH GI GL GM GN GP GQ GR GS GT GU GW GY HK HM HN HR HT HU ID IE IL IM IN IO IQ IR "
        + "IS IT JE JM JO JP KE KG KH KI KM KN KP KR KW KY KZ LA LB LC LI LK LR LS LT LU LV LY MA MC MD ME MF MG MH MK "
        + "ML MM MN MO MP MQ MR MS MT MU MV MW MX MY MZ NA NC NE NF NG NI NL NO NP NR NU NZ OM PA PE PF PG PH PK PL PM "
        + "PN PR PS PT PW PY QA RE RO RS RU RW SA SB SC SD SE SG SH SI SJ SK SL SM SN SO SR SS ST SV SX SY SZ TC TD TF "
        + "TG TH TJ TK TL TM TN TO TR TT TV TW TZ UA UG UM US UY UZ VA VC VE VG VI VN VU WF WS YE YT ZA ZM ZW";

    private const int LongestPart = 3;

    /// <summary>The code in capitals, or why it is none.</summary>
    /// <param name="written">As typed: <c>gb</c>, <c>US-MD</c>.</param>
    public static (string? Code, Sentence? Why) Read(string written)
    {
        var code = written.Trim().ToUpperInvariant();
        var (country, part) = code.IndexOf('-') is >= 0 and var hyphen
            ? (code[..hyphen], code[(hyphen + 1)..])
            : (code, null);
        return country.Length != 2 || !Codes.Contains(country, StringComparison.Ordinal) || country.Contains(' ')
                ? (
                    null,
                    $"\"{written.Trim()}\" is no code of ISO 3166: two letters as GB, for a part of a country US-MD."
                )
            : part is not null && !IsPart(part)
                ? (null, $"\"{written.Trim()}\": after the hyphen stand one to three letters or digits, as in US-MD.")
            : (code, null);
    }

    private static bool IsPart(string part) =>
        part.Length is > 0 and <= LongestPart && part.All(char.IsAsciiLetterOrDigit);
}
