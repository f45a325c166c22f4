namespace Witnessmark.Bench.Findings;

/// <summary>What the shop asks for its work, as <c>[estimates]</c> in its file says.</summary>
/// <param name="Rate">For one hour of hands-on work, before tax.</param>
/// <param name="TaxThousandths">Tax in thousandths of a percent: 19 % is 19 000.</param>
public sealed record EstimateTerms(Money Rate, long TaxThousandths)
{
    /// <summary>Decimals of a percentage.</summary>
    public const int TaxDecimals = 3;

    /// <summary>The largest tax that is taken for one: 100 %.</summary>
    internal const long MostTax = 100_000;

    /// <summary>What the shop has to say before anything can be estimated.</summary>
    public static Sentence Missing =>
        $"The workshop's file sets no rate yet. Write in shop.toml: [estimates] with currency = \"EUR\", rate = 78.00 (for one hour) and tax = 19 (percent).";

    /// <summary>The currency.</summary>
    public Currency Currency => Rate.Currency;

    /// <summary>The tax as it is written: <c>19</c>.</summary>
    public string Tax => DecimalText.Short(TaxThousandths, TaxDecimals);
}
