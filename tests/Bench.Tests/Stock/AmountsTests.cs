using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Stock;
using Witnessmark.Bench.Tests.Book;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Tests.Stock;

public class AmountsTests
{
    private static readonly Unit Litre = UnitTable.Named("L");

    private static readonly StockItem Washer = new(
        "washer",
        "Washer",
        ["Washer"],
        [],
        null,
        [],
        null,
        null,
        null,
        null
    );
    private static readonly StockItem Drum = Washer with { Name = "Drum oil", Counted = Litre };
    private static readonly StockItem Bottles = Washer with
    {
        Name = "Oil",
        Sizes = [new(1, Litre), new(500, UnitTable.Named("mL"))],
    };
    private static readonly StockItem Shim = Washer with { Name = "Shim", Measured = UnitTable.Named("mm") };

    [Theory]
    [InlineData("3", "3")]
    [InlineData(" 0 ", "0")]
    [InlineData("1000000", "1000000")]
    [InlineData("3.0", "3")]
    [InlineData("2.5", null)]
    [InlineData("-1", null)]
    [InlineData("1000001", null)]
    [InlineData("", null)]
    [InlineData("NaN", null)]
    [InlineData("1e3", null)]
    [InlineData("three", null)]
    public void Pieces_are_whole(string text, string? amount) => Same(text, Washer, amount);

    [Theory]
    [InlineData("2.5", "2.5")]
    [InlineData("2,5 L", "2.5")]
    [InlineData("0.000001", "0.000001")]
    [InlineData("0.0000001", null)]
    [InlineData("2 mL", null)]
    public void What_is_drawn_loose_has_decimals(string text, string? amount) => Same(text, Drum, amount);

    [Theory]
    [InlineData("1 L", "1 L")]
    [InlineData("1000 mL", "1 L")]
    [InlineData("0,5 L", "500 mL")]
    [InlineData("2 L", null)]
    [InlineData("1 kg", null)]
    [InlineData(null, null)]
    public void A_bottle_has_one_of_its_sizes(string? text, string? size) => SameSize(text, Bottles, size);

    [Theory]
    [InlineData("2.35 mm", "2.35 mm")]
    [InlineData("2.350 mm", "2.35 mm")]
    [InlineData("0.1 in", "2.54 mm")]
    [InlineData("0 mm", null)]
    [InlineData("2.35", null)]
    public void A_shim_has_its_measured_size(string? text, string? size) => SameSize(text, Shim, size);

    [Fact]
    public void What_has_no_sizes_takes_none()
    {
        Assert.Equal((null, null), Amounts.Size(" ", Washer));
        Assert.Equal("Washer has no sizes.", Amounts.Size("1 L", Washer).Why);
    }

    [Fact]
    public void The_shelf_of_the_demo_is_read_as_written()
    {
        var stock = DemoFiles.Bench.Workshop.Stock;
        var oil = stock["oil-10w-40"];
        Assert.Equal(["4 L", "1 L"], oil.Sizes.Select(s => s.ToString()));
        Assert.Equal((2, "8 L", "rack 2"), (oil.LeadDays, oil.ReorderAt.ToString(), oil.Place));
        Assert.True(oil.ServesFor("engine oil of the maker's grade", "fell-640"));
        Assert.False(oil.ServesFor("engine oil of the maker's grade", "another"));
        Assert.True(stock["split-pin-4"].ServesFor("split pin, where there is one", "another"));
        Assert.Equal("10 1", stock["crush-washer-14"].ReorderAt.ToString());
        Assert.Equal("mm", stock["shim-9-48"].Measured!.Symbol);
    }

    [Theory]
    [InlineData("sizes = [\"4 L\", \"1 L\"]", "sizes = [\"4 L\", \"4 L\"]", "\"4 L\" a second time")]
    [InlineData("sizes = [\"4 L\", \"1 L\"]", "sizes = [\"4 L\", \"1 mm\"]", "\"1 mm\"")]
    [InlineData("sizes = [\"4 L\", \"1 L\"]", "sizes = [\"4 L\", \"1 L\", \"4000 L\"]", "\"4000 L\"")]
    [InlineData("reorder-at = \"8 L\"", "reorder-at = \"8 mm\"", "\"8 mm\"")]
    [InlineData("lead = \"7 day\"", "lead = \"-1 day\"", "\"-1 day\"")]
    [InlineData("lead = \"7 day\"", "lead = \"1001 day\"", "\"1001 day\"")]
    [InlineData("measured = \"mm\"", "measured = \"kPa\"", "\"kPa\"")]
    [InlineData("measured = \"mm\"", "measured = \"mm\"\ncounted = \"L\"", "more than one of")]
    [InlineData("serves = [\"stripe paint\"]", "serves = [\"stripe pant\"]", "no point uses up \"stripe pant\"")]
    [InlineData("points = [\"steering-head-nut\"]", "points = [\"steering-head-nt\"]", "there is no point")]
    public void Slips_in_the_shelf_are_told(string old, string replacement, string found) =>
        Assert.Contains(found, Assert.Single(DemoFiles.MistakesWith("shop.toml", old, replacement)).Found);

    private static void Same(string text, StockItem item, string? amount)
    {
        var (read, why) = Amounts.Read(text, item);
        Assert.Equal(amount, read is { } a ? Amounts.Text(a) : null);
        Assert.Equal(amount is null, why is not null);
    }

    private static void SameSize(string? text, StockItem item, string? size)
    {
        var (read, why) = Amounts.Size(text, item);
        Assert.Equal((size, size is null), (read, why is not null));
    }
}
