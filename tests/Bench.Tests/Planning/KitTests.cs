using Witnessmark.Bench.Book;
using Witnessmark.Bench.Planning;
using Witnessmark.Bench.Tests.Book;

namespace Witnessmark.Bench.Tests.Planning;

public class KitTests
{
    private static readonly Point Plain = SmallShop.Bench().Book.Points["polish"];

    [Fact]
    public void Things_of_one_name_are_one_line_for_several_points()
    {
        var kit = Kit.Of(
            [
                With("a", new("washer", "1"), new("oil", "0.5 L"), new("rag")),
                With("b", new("washer", "2"), new("oil", "250 mL"), new("rag")),
            ],
            SmallShop.Bench().Sheets[0]
        );
        Assert.Equal(["washer 3 a,b", "oil 0.75 L a,b", "rag as needed a,b"], kit.Select(k => $"{k.Item} {k.Quantity} {string.Join(',', k.For)}"));
    }

    [Fact]
    public void Counts_and_quantities_are_not_added_to_each_other()
    {
        var kit = Kit.Of([With("a", new Consumable("grease", "1")), With("b", new Consumable("grease", "20 g"))], SmallShop.Bench().Sheets[0]);
        Assert.Equal("1 and 20 g", Assert.Single(kit).Quantity);
    }

    [Fact]
    public void A_figure_says_how_much_and_without_it_nobody_guesses()
    {
        var bench = DemoFiles.Bench;
        var oil = Kit.Of([bench.Book.Points["oil-first-fill"]], bench.Newest("fell-640")!);
        Assert.Equal("3.6 US qt", Assert.Single(oil).Quantity);
        Assert.Equal(Kit.AsNeeded, Assert.Single(Kit.Of([bench.Book.Points["oil-first-fill"]], SmallShop.Bench().Sheets[0])).Quantity);
    }

    private static Point With(string id, params Consumable[] consumables) => Plain with { Id = id, Consumables = consumables };
}
