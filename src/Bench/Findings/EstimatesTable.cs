using Witnessmark.Bench.Toml;

namespace Witnessmark.Bench.Findings;

/// <summary>Reads the table <c>[estimates]</c> of a shop.</summary>
internal static class EstimatesTable
{
    /// <summary>The shop's terms; null where it has none, or with mistakes noted.</summary>
    public static EstimateTerms? Read(TomlTable? table)
    {
        if (table is null)
            return null;
        var code = table.Text("currency");
        var currency = Currency.Of(code);
        if (currency is null && code.Length > 0)
            table.Wrong(
                "currency",
                $"\"{code}\" is no currency that is known here",
                $"one of {Currency.Allowed} (ISO 4217)"
            );
        var rate = Steps(table, "rate", currency?.Decimals ?? 2, "what one hour costs before tax, e.g. 78.00");
        var tax = Steps(table, "tax", EstimateTerms.TaxDecimals, "percent of tax, e.g. 19, or 0 for none");
        if (tax > EstimateTerms.MostTax)
            table.Wrong("tax", $"{DecimalText.Short(tax.Value, EstimateTerms.TaxDecimals)} percent", "0 to 100");
        table.NoOtherKeys();
        return currency is null || rate is null || tax is null ? null : new(new(rate.Value, currency), tax.Value);
    }

    private static long? Steps(TomlTable table, string key, int decimals, string right)
    {
        if (table.DecimalOrNothing(key, right) is not { } text)
        {
            if (!table.Has(key))
                table.Wrong(key, $"\"{key}\" is missing", $"{key} = {right}");
            return null;
        }
        if (DecimalText.Read(text, decimals, out var why) is { } steps)
            return steps;
        table.Wrong(key, why!, right);
        return null;
    }
}
