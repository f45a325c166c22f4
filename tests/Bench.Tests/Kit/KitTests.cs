using Witnessmark.Bench.Book;
using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Stock;
using Witnessmark.Handbook.Quantities;
using static Witnessmark.Bench.Tests.Kit.DemoKit;
using TheKit = Witnessmark.Bench.Kit.Kit;

namespace Witnessmark.Bench.Tests.Kit;

/// <summary>What is used up: situations written by hand on the demo machine.</summary>
public class KitTests
{
    private const string Oil = "engine oil of the maker's grade";
    private const string Washer = "crush washer, new";

    [Fact]
    public void An_oil_service_takes_washer_filter_oil_and_the_wrench_set_to_the_figure()
    {
        var kit = For(["drain-plug", "oil-filter", "oil-first-fill", "oil-level"]);
        Assert.Equal(
            [
                "crush washer, new: 1 for drain-plug",
                "rag: unknown for drain-plug oil-filter",
                "oil filter, new: 1 for oil-filter",
                "engine oil of the maker's grade: 3.6 US qt for oil-first-fill",
                "Torque wrench 20 to 120 N·m: 1 for drain-plug",
                "Measuring jug 2 L: 1 for oil-first-fill",
                "The engine's own dipstick: 1 for oil-level",
            ],
            kit.Lines.Select(Said)
        );
        Assert.Empty(kit.Shortages);
        Assert.Equal("Drain plug: set 29 N·m.", Line(kit, "Torque wrench 20 to 120 N·m").Note);
    }

    [Fact]
    public void Counts_add_up_over_points_and_what_nobody_counted_is_unknown_never_zero()
    {
        var washers = Demo.Book.Points["drain-plug"] with
        {
            Id = "second",
            Consumables = [new(Washer, "2"), new("rag")],
        };
        var more = washers with { Id = "third", Consumables = [new(Washer)] };
        var kit = For([Demo.Book.Points["drain-plug"], washers]);
        Assert.Equal("3", Line(kit, Washer).Quantity);
        kit = For([Demo.Book.Points["drain-plug"], washers, more]);
        Assert.Equal("3, and more that is unknown", Line(kit, Washer).Quantity);
        Assert.Equal(["drain-plug", "second", "third"], Line(kit, Washer).For);
        Assert.Equal("unknown", Line(kit, "rag").Quantity);
        Assert.DoesNotContain(kit.Lines, l => l.Quantity.ToString().StartsWith('0'));
    }

    [Fact]
    public void Both_fork_legs_are_filled_though_the_figure_is_for_one() =>
        Assert.Equal("960 mL", Line(For(["fork-oil-level"]), "fork oil of the maker's grade").Quantity);

    [Fact]
    public void Amounts_add_up_in_one_unit_rounded_up_and_unlike_ones_are_told()
    {
        Point With(string id, params Consumable[] used) =>
            Demo.Book.Points["leaks"] with
            {
                Id = id,
                Consumables = used,
            };
        var kit = For([With("a", new Consumable("x", "0.1 L")), With("b", new Consumable("x", "251 mL"))]);
        Assert.Equal("0.36 L", Line(kit, "x").Quantity);
        kit = For([With("a", new Consumable("x", "0.1 L")), With("b", new Consumable("x", "5 g"))]);
        Assert.Equal(
            ("0.1 L, and more that is unknown", "5 g beside 0.1 L cannot be added."),
            (Line(kit, "x").Quantity, Line(kit, "x").Note)
        );
        kit = For([With("a", new Consumable("x", "2")), With("b", new Consumable("x", "5 g"))]);
        Assert.Equal("2 and 5 g", Line(kit, "x").Quantity);
    }

    [Fact]
    public void A_figure_that_the_sheet_lacks_is_unknown_and_said()
    {
        var bare = Sheet with { Figures = new Dictionary<string, Figure>() };
        var kit = WithSheet(["oil-first-fill"], bare, null);
        Assert.Equal(
            ("unknown", "The figure sheet has no amount \"oil.capacity\"."),
            (Line(kit, Oil).Quantity, Line(kit, Oil).Note)
        );
    }

    // 3.60 US qt = 3.4069 L (NIST SP 811: 0.946352946 L): one 4 L bottle or four of 1 L hold 4 L; one is fewer
    [Theory]
    [InlineData(2, 6, "Take 1 × 4 L of Engine oil 10W-40, rack 2, 0.59 L is left over.")]
    [InlineData(0, 6, "Take 4 × 1 L of Engine oil 10W-40, rack 2, 0.59 L is left over.")]
    [InlineData(0, 3, "Engine oil 10W-40, rack 2, only 3 L there.")]
    public void Bottles_are_chosen_from_what_is_there(int large, int small, string note)
    {
        var stock = Shelf.Of([Came("oil-10w-40", large, "4 L"), Came("oil-10w-40", small, "1 L")]);
        var kit = For(["oil-first-fill"], stock);
        Assert.Equal(note, Line(kit, Oil).Note);
        Assert.Equal(small == 3, kit.Shortages.Count == 1);
        if (kit.Shortages is [var shortage])
            Assert.Equal(
                ("Engine oil 10W-40", "3.6 US qt", "3 L", 2, "Only 3 L there. Order it: 2 days."),
                (
                    shortage.Item.ToString(),
                    shortage.Needed.ToString(),
                    shortage.There.ToString(),
                    shortage.LeadDays,
                    shortage.Why.ToString()
                )
            );
    }

    [Fact]
    public void What_is_kept_back_for_this_job_is_there_for_it_and_for_no_other()
    {
        var stock = Shelf.Of([
            Came("crush-washer-14", 1),
            new("r", StockMoveKind.Reserved, new("crush-washer-14"), 1, "Ines Tallow", "2026-11-25", "412"),
        ]);
        Assert.Empty(For(["drain-plug"], stock, "412").Shortages);
        Assert.Equal("0", Assert.Single(For(["drain-plug"], stock, "413").Shortages).There);
    }

    [Fact]
    public void What_the_shelf_does_not_know_is_said_and_is_no_shortage()
    {
        var kit = For(["oil-filter"], Shelf.Empty);
        Assert.Equal("Not kept on the shelf.", Line(kit, "rag").Note);
        var filter = Assert.Single(kit.Shortages);
        Assert.Equal(
            ("Oil filter Fell 640", "none on record", "None on record. Order it: 5 days."),
            (filter.Item, filter.There, filter.Why)
        );
        Assert.DoesNotContain(For(["oil-filter"]).Lines, l => l.Note.Length > 0);
    }

    // nothing is not enough, however little is needed
    [Fact]
    public void Nothing_there_is_short_also_where_nobody_knows_how_much_is_needed()
    {
        var paint = new StockKey("stripe-paint");
        var counted = new StockMove("c", StockMoveKind.Counted, paint, 0, "Ines Tallow", "2026-11-25");
        var point = Demo.Book.Points["leaks"] with { Consumables = [new("stripe paint")] };
        var shortage = Assert.Single(For([point], Shelf.Of([counted])).Shortages);
        Assert.Equal(
            ("unknown", "0", "Only 0 there. Order it: 4 days."),
            (shortage.Needed, shortage.There, shortage.Why)
        );
        Assert.Empty(For([point], Shelf.Of([counted with { Amount = 1 }])).Shortages);
    }

    [Theory]
    [InlineData(0, "unknown", "The figure sheet has no amount \"oil.capacity\".")]
    [InlineData(200, "200 L", "Engine oil 10W-40, rack 2, only 6 L there.")]
    [InlineData(200.5, "200.5 L", "Engine oil 10W-40, rack 2, 6 there: look whether it is enough.")]
    public void An_amount_that_no_machine_takes_is_left_to_the_eye(double litres, string quantity, string note)
    {
        var figures = Sheet.Figures.ToDictionary();
        figures["oil.capacity"] = figures["oil.capacity"] with { Value = litres, Unit = UnitTable.Named("L") };
        var stock = Shelf.Of([Came("oil-10w-40", 6, "1 L")]);
        var line = Line(WithSheet(["oil-first-fill"], Sheet with { Figures = figures }, stock), Oil);
        Assert.StartsWith(note, line.Note);
        Assert.Equal(quantity, line.Quantity);
    }

    [Fact]
    public void A_bottle_whose_size_nobody_wrote_down_is_left_to_the_eye()
    {
        var bottle = Demo.Workshop.Stock["oil-10w-40"] with { Sizes = [] };
        var shop = Demo.Workshop with { Stock = new Dictionary<string, StockItem> { ["oil-10w-40"] = bottle } };
        var kit = TheKit.For(
            [Demo.Book.Points["oil-first-fill"]],
            Sheet,
            shop,
            Shelf.Of([Came("oil-10w-40", 3)]),
            DemoKit.Day
        );
        Assert.Equal("Engine oil 10W-40, rack 2, 3 there: look whether it is enough.", Line(kit, Oil).Note);
        var drum = bottle with { Counted = UnitTable.Named("L") };
        shop = shop with { Stock = new Dictionary<string, StockItem> { ["oil-10w-40"] = drum } };
        foreach (var (there, enough) in new[] { (3.4m, false), (3.41m, true) })
            Assert.Equal(
                enough,
                TheKit
                    .For(
                        [Demo.Book.Points["oil-first-fill"]],
                        Sheet,
                        shop,
                        Shelf.Of([Came("oil-10w-40", there)]),
                        DemoKit.Day
                    )
                    .Shortages.Count == 0
            );
    }

    [Fact]
    public void Points_and_things_stand_once()
    {
        var kit = For(["drain-plug", "drain-plug", "axle-nut"]);
        Assert.Equal("1", Line(kit, Washer).Quantity);
        Assert.Equal(["drain-plug", "axle-nut"], Line(kit, "Torque wrench 20 to 120 N·m").For);
        Assert.Empty(For(Array.Empty<string>()).Lines);
    }

    [Fact]
    public void Every_purpose_of_the_book_has_a_kit_without_an_empty_line()
    {
        foreach (var plan in Demo.Book.Purposes.Values)
            Assert.All(
                For([.. plan.Select(p => p.Point)], Shelf.Empty).Lines,
                l => Assert.True(l is { Item.Length: > 0, Quantity.Length: > 0, For.Count: > 0 })
            );
    }
}
