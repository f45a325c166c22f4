using Witnessmark.Handbook;

namespace Witnessmark.Bench.Findings;

/// <summary>A part of an estimate as it was typed.</summary>
/// <param name="Item">What it is.</param>
/// <param name="Quantity">How many, decimal: <c>2</c>, <c>0.9</c>.</param>
/// <param name="Price">Of one, before tax.</param>
/// <param name="Tax">Its own tax in percent where the law sets another for it, or null.</param>
public sealed record PartDraft(string Item, string Quantity, string Price, string? Tax = null);

/// <summary>An estimate as it was typed, with the terms of the day it was made.</summary>
/// <param name="Currency">Code of ISO 4217.</param>
/// <param name="Rate">Of one hour, before tax.</param>
/// <param name="Tax">Percent.</param>
/// <param name="Minutes">Hands-on time.</param>
/// <param name="Parts">What is built in.</param>
public sealed record EstimateDraft(
    string Currency,
    string Rate,
    string Tax,
    int Minutes,
    IReadOnlyList<PartDraft> Parts
)
{
    /// <summary>The longest work that is estimated at once: 100 hours.</summary>
    public const int MostMinutes = 6000;

    /// <summary>The most parts in one estimate.</summary>
    public const int MostParts = 60;

    private const long MostQuantity = 1_000_000; // 1000, in thousandths
    private const long MostPrice = 100_000_000; // in the smallest unit

    /// <summary>With the shop's terms as they are now.</summary>
    public static EstimateDraft At(EstimateTerms terms, int minutes, IReadOnlyList<PartDraft> parts) =>
        new(terms.Currency.Code, terms.Rate.Number, terms.Tax, minutes, parts);

    /// <summary>The estimate, or what is wrong with the text.</summary>
    public Answer<Estimate> Read()
    {
        if (Findings.Currency.Of(Currency) is not { } currency)
            return Refuse(
                "currency",
                $"\"{Currency}\" is no currency that is known here; allowed are {Findings.Currency.Allowed}"
            );
        if (DecimalText.Read(Rate, currency.Decimals, out var why) is not { } rate)
            return Refuse("rate", why!);
        if (rate > MostPrice)
            return Refuse("rate", $"{Rate} for one hour is more than {new Money(MostPrice, currency)}");
        if (Percent(Tax, out why) is not { } tax)
            return Refuse("tax", why!);
        if (Minutes is < 0 or > MostMinutes)
            return Refuse("minutes", $"{Minutes} minutes of work; allowed are 0 to {MostMinutes}");
        if (Parts.Count > MostParts)
            return Refuse("parts", $"{Parts.Count} parts; at most {MostParts} stand in one estimate");
        if (Minutes == 0 && Parts.Count == 0)
            return Refuse("empty", $"neither work nor parts: there is nothing to estimate");
        List<EstimatePart> parts = [];
        foreach (var part in Parts)
        {
            if (Part(part, currency, tax, out why) is not { } read)
                return Refuse("parts", why!);
            parts.Add(read);
        }
        return new Estimate(new(new(rate, currency), tax), Minutes, parts);
    }

    private static EstimatePart? Part(PartDraft part, Currency currency, long tax, out Sentence? why)
    {
        why = string.IsNullOrWhiteSpace(part.Item) ? (Sentence)$"a part without a name" : null;
        if (
            why is not null
            || DecimalText.Read(part.Quantity, EstimatePart.QuantityDecimals, out why) is not { } quantity
        )
            return null;
        if (DecimalText.Read(part.Price, currency.Decimals, out why) is not { } price)
        {
            why = $"{part.Item}: price {why} ({currency.Code})";
            return null;
        }
        var own = part.Tax is null ? tax : Percent(part.Tax, out why);
        why =
            own is null ? (Sentence)$"{part.Item}: {why}"
            : quantity is 0 or > MostQuantity
                ? (Sentence)$"{part.Item}: quantity {part.Quantity}; allowed is more than 0, up to 1000"
            : price > MostPrice
                ? (Sentence)$"{part.Item}: price {part.Price} is more than {new Money(MostPrice, currency)}"
            : null;
        return why is null ? new(part.Item, quantity, new(price, currency), own!.Value) : null;
    }

    private static long? Percent(string text, out Sentence? why)
    {
        if (DecimalText.Read(text, EstimateTerms.TaxDecimals, out why) is not { } tax)
            return null;
        if (tax <= EstimateTerms.MostTax)
            return tax;
        why = $"\"{text}\" percent of tax; allowed are 0 to 100";
        return null;
    }

    private static Answer<Estimate> Refuse(string key, Sentence why) => Answer<Estimate>.Refuse(key, $"{why}.");
}
