namespace Witnessmark.Bench.Findings;

/// <summary>One part of an estimate.</summary>
/// <param name="Item">What it is.</param>
/// <param name="Thousandths">How many, in thousandths.</param>
/// <param name="Price">Of one, before tax.</param>
/// <param name="TaxThousandths">Its tax, in thousandths of a percent.</param>
public sealed record EstimatePart(string Item, long Thousandths, Money Price, long TaxThousandths)
{
    /// <summary>Decimals of a quantity.</summary>
    public const int QuantityDecimals = 3;

    /// <summary>As it is written: <c>0.9</c>.</summary>
    public string Quantity => DecimalText.Short(Thousandths, QuantityDecimals);

    /// <summary>Its tax in percent, as it is written.</summary>
    public string Tax => DecimalText.Short(TaxThousandths, EstimateTerms.TaxDecimals);

    /// <summary>Quantity times price, to the smallest unit.</summary>
    public Money Amount => Money.Rounded(Thousandths * Price.Units, 1000, Price.Currency);
}

/// <summary>The tax of one rate.</summary>
/// <param name="Thousandths">The rate, in thousandths of a percent.</param>
/// <param name="Net">The sum of all lines with this rate.</param>
/// <param name="Tax">The tax on that sum.</param>
public sealed record TaxOfRate(long Thousandths, Money Net, Money Tax)
{
    /// <summary><c>19</c>.</summary>
    public string Percent => DecimalText.Short(Thousandths, EstimateTerms.TaxDecimals);
}

/// <summary>What putting a finding right is expected to cost.</summary>
/// <remarks>
/// <para><b>Formula.</b> Each line: round(quantity · price), work: round(minutes · rate ÷ 60). For each rate of tax once:
/// round(sum of its lines · percent ÷ 100). Total = sum of all lines + sum of all taxes.</para>
/// <para><b>Units.</b> The smallest unit of the currency, as whole numbers; quantities in thousandths, percentages in thousandths of a
/// percent. Each round() goes to the smallest unit, half away from zero. No floating point anywhere.</para>
/// <para><b>Source.</b> EN 16931-1:2017, 6.5: line net amount (BT-131), taxable amount and tax amount of each rate (BT-116, BT-117,
/// BR-CO-17), total with tax (BT-112, BR-CO-15). That a half is rounded away from zero: common practice, no source.</para>
/// <para><b>Valid when</b> prices and the rate are meant before tax. What an estimate binds a workshop to, and which tax is due on
/// what, is for local law.</para>
/// </remarks>
/// <param name="Terms">Rate, currency and tax as they were when it was made.</param>
/// <param name="Minutes">Hands-on time, 0 to 6000.</param>
/// <param name="Parts">At most 60.</param>
public sealed record Estimate(EstimateTerms Terms, int Minutes, IReadOnlyList<EstimatePart> Parts)
{
    /// <summary>The work.</summary>
    public Money Work => Money.Rounded(Minutes * Terms.Rate.Units, 60, Terms.Currency);

    /// <summary>All lines, before tax.</summary>
    public Money Net => new(Work.Units + Parts.Sum(p => p.Amount.Units), Terms.Currency);

    /// <summary>The taxes, the highest rate first.</summary>
    public IReadOnlyList<TaxOfRate> Taxes =>
        [
            .. Lines()
                .GroupBy(l => l.Tax)
                .OrderByDescending(rate => rate.Key)
                .Select(rate => Taxed(rate.Key, rate.Sum(l => l.Amount))),
        ];

    /// <summary>What the owner is told: all lines with all taxes.</summary>
    public Money Total => new(Net.Units + Taxes.Sum(t => t.Tax.Units), Terms.Currency);

    private IEnumerable<(long Tax, long Amount)> Lines()
    {
        foreach (var part in Parts)
            yield return (part.TaxThousandths, part.Amount.Units);
        if (Minutes > 0)
            yield return (Terms.TaxThousandths, Work.Units);
    }

    private TaxOfRate Taxed(long thousandths, long net) =>
        new(
            thousandths,
            new(net, Terms.Currency),
            Money.Rounded(net * thousandths, EstimateTerms.MostTax, Terms.Currency)
        );
}
