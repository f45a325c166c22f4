using Witnessmark.Bench.Findings;

namespace Witnessmark.Bench.Tests.Findings;

/// <summary>Money to the cent: a published invoice, hand-computed sums, rounding, and what is refused.</summary>
public sealed class MoneyTests
{
    // ISO 4217 list one as in datasets/currency-codes, data/codes-all.csv: alphabetic code, minor unit
    [Theory]
    [InlineData("AUD", 2)]
    [InlineData("CAD", 2)]
    [InlineData("CHF", 2)]
    [InlineData("CZK", 2)]
    [InlineData("DKK", 2)]
    [InlineData("EUR", 2)]
    [InlineData("GBP", 2)]
    [InlineData("HUF", 2)]
    [InlineData("ILS", 2)]
    [InlineData("INR", 2)]
    [InlineData("JPY", 0)]
    [InlineData("KWD", 3)]
    [InlineData("NOK", 2)]
    [InlineData("NZD", 2)]
    [InlineData("PLN", 2)]
    [InlineData("SEK", 2)]
    [InlineData("TND", 3)]
    [InlineData("USD", 2)]
    [InlineData("ZAR", 2)]
    public void The_minor_units_are_those_of_the_standard(string code, int decimals)
    {
        Assert.Equal(decimals, Currency.Of(code)?.Decimals);
        Assert.Equal(19, Currency.Known.Count);
    }

    // ConnectingEurope/eInvoicing-EN16931, ubl/examples/ubl-tc434-example1.xml, an example of CEN/TC 434 for EN 16931-1: four
    // lines of 21 %; those of 6 % as their published sum, since one of them is a return
    [Fact]
    public void A_published_invoice_of_two_rates_comes_out_to_the_cent()
    {
        var estimate = Read(
            new EstimateDraft(
                "EUR",
                "0",
                "21",
                0,
                [
                    new("line 14", "1", "10.80"),
                    new("line 16", "2", "3.80"),
                    new("line 17", "2", "4.67"),
                    new("line 18", "1", "18.63"),
                    new("lines of 6 %", "1", "183.23", "6"),
                ]
            )
        );
        Assert.Equal(["10.80", "7.60", "9.34", "18.63", "183.23"], estimate.Parts.Select(p => p.Amount.Number));
        Assert.Equal(["21: 46.37, 9.74", "6: 183.23, 10.99"], estimate.Taxes.Select(Shown));
        Assert.Equal("229.60 EUR", estimate.Net.ToString());
        Assert.Equal("250.33 EUR", estimate.Total.ToString());
    }

    // by hand: 40 min · 78.00/60 = 52.00; 64.90 + 2 · 1.15 + 0.25 · 18.50 = 4.625 -> 4.63; net 123.83; 19 % = 23.5277 -> 23.53
    [Fact]
    public void Work_and_parts_of_one_rate_by_hand()
    {
        var estimate = Read(
            new EstimateDraft(
                "EUR",
                "78.00",
                "19",
                40,
                [new("hose", "1", "64.90"), new("washer", "2", "1.15"), new("fluid", "0.25", "18.50")]
            )
        );
        Assert.Equal("52.00", estimate.Work.Number);
        Assert.Equal("4.63", estimate.Parts[2].Amount.Number);
        Assert.Equal("123.83 EUR", estimate.Net.ToString());
        Assert.Equal(["19: 123.83, 23.53"], estimate.Taxes.Select(Shown));
        Assert.Equal("147.36 EUR", estimate.Total.ToString());
    }

    // by hand: tax of each line alone would be 3 · round(0.19 · 0.03 = 0.0057) = 0.03; once on the sum, 0.19 · 0.09 = 0.0171, it is 0.02
    [Fact]
    public void Tax_is_taken_once_on_the_sum_and_not_on_each_line()
    {
        var three = new PartDraft("clip", "1", "0.03");
        Assert.Equal("0.11 EUR", Read(new EstimateDraft("EUR", "0", "19", 0, [three, three, three])).Total.ToString());
    }

    // by hand; a half goes away from zero: 0.5 · 0.01 = 0.005 -> 0.01, 0.499 · 0.01 -> 0.00, 2.5 · 1 yen -> 3 yen, 0.5 · 0.001 -> 0.001
    [Theory]
    [InlineData("EUR", "0.5", "0.01", "0.01")]
    [InlineData("EUR", "0.499", "0.01", "0.00")]
    [InlineData("EUR", "1.5", "0.01", "0.02")]
    [InlineData("EUR", "2.5", "0.01", "0.03")]
    [InlineData("JPY", "2.5", "1", "3")]
    [InlineData("JPY", "2.499", "1", "2")]
    [InlineData("KWD", "0.5", "0.001", "0.001")]
    [InlineData("KWD", "1", "12.345", "12.345")]
    [InlineData("EUR", "1000", "1000000.00", "1000000000.00")]
    public void A_line_is_rounded_to_the_smallest_unit_half_away_from_zero(
        string currency,
        string quantity,
        string price,
        string amount
    ) =>
        Assert.Equal(
            amount,
            Read(new EstimateDraft(currency, "0", "0", 0, [new("x", quantity, price)])).Parts[0].Amount.Number
        );

    // by hand: 1 min of 78.00 = 1.30; 1 min of 0.30 = 0.005 -> 0.01; 7 min of 100.00 = 11.6666… -> 11.67; 6000 min of 1000000.00 = 100 h
    [Theory]
    [InlineData("78.00", 1, "1.30")]
    [InlineData("0.30", 1, "0.01")]
    [InlineData("0.29", 1, "0.00")]
    [InlineData("100.00", 7, "11.67")]
    [InlineData("1000000.00", 6000, "100000000.00")]
    public void Work_is_minutes_of_the_rate_of_an_hour(string rate, int minutes, string work) =>
        Assert.Equal(work, Read(new EstimateDraft("EUR", rate, "0", minutes, [])).Work.Number);

    [Fact]
    public void The_largest_estimate_is_still_exact()
    {
        var largest = new PartDraft("x", "1000", "1000000.00");
        var estimate = Read(new EstimateDraft("EUR", "0", "100", 0, [.. Enumerable.Repeat(largest, 60)]));
        Assert.Equal("120000000000.00 EUR", estimate.Total.ToString());
    }

    [Theory]
    [InlineData("XXX", "78", "19", 30, "1", "1.00", "\"XXX\" is no currency that is known here; allowed are AUD,")]
    [InlineData("eur", "78", "19", 30, "1", "1.00", "\"eur\" is no currency")]
    [InlineData("EUR", "78.005", "19", 30, "1", "1.00", "\"78.005\" has 3 decimals; at most 2 are allowed here.")]
    [InlineData("EUR", "-78", "19", 30, "1", "1.00", "\"-78\" is no number; right would be digits such as \"12.50\".")]
    [InlineData("EUR", "1000000.01", "19", 30, "1", "1.00", "1000000.01 for one hour is more than 1000000.00 EUR.")]
    [InlineData("EUR", "78", "100.001", 30, "1", "1.00", "\"100.001\" percent of tax; allowed are 0 to 100.")]
    [InlineData("EUR", "78", "NaN", 30, "1", "1.00", "\"NaN\" is no number")]
    [InlineData("EUR", "78", "19", -1, "1", "1.00", "-1 minutes of work; allowed are 0 to 6000.")]
    [InlineData("EUR", "78", "19", 6001, "1", "1.00", "6001 minutes of work")]
    [InlineData("EUR", "78", "19", 30, "0", "1.00", "x: quantity 0; allowed is more than 0, up to 1000.")]
    [InlineData("EUR", "78", "19", 30, "1000.001", "1.00", "x: quantity 1000.001; allowed")]
    [InlineData("EUR", "78", "19", 30, "1.0001", "1.00", "\"1.0001\" has 4 decimals; at most 3")]
    [InlineData("EUR", "78", "19", 30, "1", "1000000.01", "x: price 1000000.01 is more than 1000000.00 EUR.")]
    [InlineData(
        "JPY",
        "78",
        "19",
        30,
        "1",
        "1.5",
        "x: price \"1.5\" has 1 decimals; at most 0 are allowed here (JPY)."
    )]
    [InlineData("EUR", "78", "19", 30, "1", "1e3", "x: price \"1e3\" is no number")]
    [InlineData("EUR", "78", "19", 30, "1", "", "x: price \"\" is no number")]
    [InlineData("EUR", "78", "19", 30, "1", "1.", "x: price \"1.\" is no number")]
    [InlineData("EUR", "78", "19", 30, "1", "1.2.3", "x: price \"1.2.3\" is no number")]
    [InlineData("EUR", "78", "19", 30, "1", "99999999999", "x: price \"99999999999\" is too large")]
    public void What_is_no_estimate_is_refused_with_what_is_allowed(
        string currency,
        string rate,
        string tax,
        int minutes,
        string quantity,
        string price,
        string because
    )
    {
        var read = new EstimateDraft(currency, rate, tax, minutes, [new("x", quantity, price)]).Read();
        Assert.Null(read.Value);
        Assert.StartsWith(because, read.Refusal!.Because, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_at_all_a_nameless_part_and_too_many_parts_are_refused()
    {
        var part = new PartDraft("x", "1", "1.00");
        Assert.Equal("empty", new EstimateDraft("EUR", "78", "19", 0, []).Read().Refusal!.Key);
        Assert.Equal("parts", new EstimateDraft("EUR", "78", "19", 0, [part with { Item = " " }]).Read().Refusal!.Key);
        Assert.Equal(
            "parts",
            new EstimateDraft("EUR", "78", "19", 0, [.. Enumerable.Repeat(part, 61)]).Read().Refusal!.Key
        );
        Assert.True(new EstimateDraft("EUR", "78", "19", 0, [.. Enumerable.Repeat(part, 60)]).Read().Holds);
    }

    [Theory]
    [InlineData("12.50", 2, 1250)]
    [InlineData("12,5", 2, 1250)]
    [InlineData(" 0.07 ", 2, 7)]
    [InlineData("007", 0, 7)]
    [InlineData("3", 3, 3000)]
    public void Decimal_text_is_read_as_whole_steps(string text, int decimals, long steps) =>
        Assert.Equal(steps, DecimalText.Read(text, decimals, out _));

    [Theory]
    [InlineData(7, 2, "0.07", "0.07")]
    [InlineData(1250, 2, "12.50", "12.5")]
    [InlineData(19_000, 3, "19.000", "19")]
    [InlineData(0, 3, "0.000", "0")]
    [InlineData(120, 0, "120", "120")]
    public void Steps_are_written_with_all_decimals_or_short(long steps, int decimals, string all, string brief)
    {
        Assert.Equal(all, DecimalText.Of(steps, decimals));
        Assert.Equal(brief, DecimalText.Short(steps, decimals));
    }

    private static Estimate Read(EstimateDraft draft) => draft.Read().Certain;

    private static string Shown(TaxOfRate tax) => $"{tax.Percent}: {tax.Net.Number}, {tax.Tax.Number}";
}
