namespace Witnessmark.Bench.Findings;

/// <summary>A currency: its code, and how many decimals its smallest unit has.</summary>
/// <remarks>
/// <b>Source.</b> ISO 4217:2015, list one (current currencies): alphabetic code and minor unit. Only those that a workshop of this
/// program has asked for; another one is refused by name.
/// </remarks>
/// <param name="Code"><c>EUR</c>.</param>
/// <param name="Decimals">Digits of the minor unit: 2 for the cent, 0 for the yen, 3 for the fils.</param>
public sealed record Currency(string Code, int Decimals)
{
    /// <summary>All that are known.</summary>
    public static IReadOnlyList<Currency> Known { get; } =
    [
        new("AUD", 2),
        new("CAD", 2),
        new("CHF", 2),
        new("CZK", 2),
        new("DKK", 2),
        new("EUR", 2),
        new("GBP", 2),
        new("HUF", 2),
        new("ILS", 2),
        new("INR", 2),
        new("JPY", 0),
        new("KWD", 3),
        new("NOK", 2),
        new("NZD", 2),
        new("PLN", 2),
        new("SEK", 2),
        new("TND", 3),
        new("USD", 2),
        new("ZAR", 2),
    ];

    /// <summary>The currency of a code, or null.</summary>
    public static Currency? Of(string code) => Known.FirstOrDefault(c => c.Code == code);

    /// <summary>What is allowed, in words.</summary>
    public static string Allowed => string.Join(", ", Known.Select(c => c.Code));
}
