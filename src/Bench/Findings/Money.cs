namespace Witnessmark.Bench.Findings;

/// <summary>An amount of money: a whole number of the currency's smallest unit, zero or more.</summary>
/// <param name="Units">Cents, pence, yen, fils.</param>
/// <param name="Currency">The currency.</param>
public readonly record struct Money(long Units, Currency Currency)
{
    /// <summary>Without the currency: <c>12.50</c>.</summary>
    public string Number => DecimalText.Of(Units, Currency.Decimals);

    /// <summary>As it is written everywhere: <c>12.50 EUR</c>.</summary>
    public override string ToString() => $"{Number} {Currency.Code}";

    /// <summary>A fraction, rounded to the smallest unit, half away from zero.</summary>
    /// <param name="over">Numerator, zero or more.</param>
    /// <param name="under">Denominator, above zero.</param>
    /// <param name="currency">The currency of the result.</param>
    internal static Money Rounded(long over, long under, Currency currency) =>
        new(over / under + (2 * (over % under) >= under ? 1 : 0), currency);
}
