using Witnessmark.Bench.Book;
using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Kit;
using Witnessmark.Bench.Machines;
using Witnessmark.Bench.Stock;
using Witnessmark.Bench.Tests.Book;
using Witnessmark.Handbook.Fasteners;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Tests.Kit;

/// <summary>Situations written by hand on the demo machine.</summary>
public class KitTests
{
    private const string Oil = "engine oil of the maker's grade";
    private const string Washer = "crush washer, new";
    private static readonly DateOnly Day = new(2026, 11, 25);
    private static readonly Workbench Bench = DemoFiles.Bench;
    private static readonly FigureSheet Sheet = Bench.Newest("fell-640")!;

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
        var washers = Bench.Book.Points["drain-plug"] with
        {
            Id = "second",
            Consumables = [new(Washer, "2"), new("rag")],
        };
        var more = washers with { Id = "third", Consumables = [new(Washer)] };
        var kit = For([Bench.Book.Points["drain-plug"], washers]);
        Assert.Equal("3", Line(kit, Washer).Quantity);
        kit = For([Bench.Book.Points["drain-plug"], washers, more]);
        Assert.Equal("3, and more that is unknown", Line(kit, Washer).Quantity);
        Assert.Equal(["drain-plug", "second", "third"], Line(kit, Washer).For);
        Assert.Equal("unknown", Line(kit, "rag").Quantity);
        Assert.DoesNotContain(kit.Lines, l => l.Quantity.StartsWith('0'));
    }

    [Fact]
    public void Both_fork_legs_are_filled_though_the_figure_is_for_one() =>
        Assert.Equal("960 mL", Line(For(["fork-oil-level"]), "fork oil of the maker's grade").Quantity);

    [Fact]
    public void Amounts_add_up_in_one_unit_rounded_up_and_unlike_ones_are_told()
    {
        Point With(string id, params Consumable[] used) =>
            Bench.Book.Points["leaks"] with
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
        var kit = Bench.Kit(["oil-first-fill"], bare, null);
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
                (shortage.Item, shortage.Needed, shortage.There, shortage.LeadDays, shortage.Why)
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
        var point = Bench.Book.Points["leaks"] with { Consumables = [new("stripe paint")] };
        var shortage = Assert.Single(For([point], Shelf.Of([counted])).Shortages);
        Assert.Equal(
            ("unknown", "0", "Only 0 there. Order it: 4 days."),
            (shortage.Needed, shortage.There, shortage.Why)
        );
        Assert.Empty(For([point], Shelf.Of([counted with { Amount = 1 }])).Shortages);
    }

    [Fact]
    public void A_bottle_whose_size_nobody_wrote_down_is_left_to_the_eye()
    {
        var bottle = Bench.Workshop.Stock["oil-10w-40"] with { Sizes = [] };
        var shop = Bench.Workshop with { Stock = new Dictionary<string, StockItem> { ["oil-10w-40"] = bottle } };
        var kit = Witnessmark.Bench.Kit.Kit.For(
            [Bench.Book.Points["oil-first-fill"]],
            Sheet,
            shop,
            Shelf.Of([Came("oil-10w-40", 3)]),
            Day
        );
        Assert.Equal("Engine oil 10W-40, rack 2, 3 there: look whether it is enough.", Line(kit, Oil).Note);
        var drum = bottle with { Counted = UnitTable.Named("L") };
        shop = shop with { Stock = new Dictionary<string, StockItem> { ["oil-10w-40"] = drum } };
        foreach (var (there, enough) in new[] { (3.4m, false), (3.41m, true) })
            Assert.Equal(
                enough,
                Witnessmark
                    .Bench.Kit.Kit.For(
                        [Bench.Book.Points["oil-first-fill"]],
                        Sheet,
                        shop,
                        Shelf.Of([Came("oil-10w-40", there)]),
                        Day
                    )
                    .Shortages.Count == 0
            );
    }

    /// <summary>The handbook's torque-setting: moment balance T·L/(L + E), FAA AC 43.13-1B figure 7-2.</summary>
    [Fact]
    public void With_an_adapter_the_setting_is_the_handbooks()
    {
        var kit = For(["steering-head-nut"]);
        var set = TorqueSetting
            .For(new Torque(88), new WrenchExtension(new(420), new(40), default))
            .Setting.NewtonMetres;
        Assert.Equal(88.0 * 420 / 460, set, 9);
        Assert.StartsWith(
            "Steering head, preload: set 80.3 N·m with Crow-foot 32 mm, so that the nut gets 88 N·m, which is what is written down.",
            Line(kit, "Torque wrench 20 to 120 N·m").Note.Replace(Title("steering-head-nut"), "Steering head, preload")
        );
        Assert.Equal("1", Line(kit, "Crow-foot 32 mm").Quantity);
        Assert.Equal(["steering-head-nut"], Line(kit, "Crow-foot 32 mm").For);
    }

    [Fact]
    public void Without_the_length_of_the_wrench_the_setting_is_not_known()
    {
        var kit = With(i => i with { Lever = null }, "steering-head-nut");
        var shortage = Assert.Single(kit.Shortages);
        Assert.EndsWith("no wrench has its \"lever\" on record.", shortage.Why);
    }

    [Fact]
    public void A_wrench_out_of_calibration_is_taken_where_only_use_hangs_on_it()
    {
        // 29 N·m: of the demo's wrenches, with the large one gone, only the overdue one covers it
        Workshop Gone() => Without("torque-wrench-120");
        var safety = Of(Gone(), Bench.Book.Points["drain-plug"]);
        Assert.Contains(
            "Old torque wrench 10 to 60 N·m had to be checked by 2025-02-12.",
            Assert.Single(safety.Shortages).Why
        );
        var use = Of(Gone(), Bench.Book.Points["drain-plug"] with { Safety = false });
        Assert.Empty(use.Shortages);
        Assert.Equal(
            "Drain plug: set 29 N·m. Old torque wrench 10 to 60 N·m had to be checked by 2025-02-12.",
            Line(use, "Old torque wrench 10 to 60 N·m").Note
        );
        // one in date goes first though the old one reaches less far
        var both = Of(Bench.Workshop, Bench.Book.Points["drain-plug"] with { Safety = false });
        Assert.NotNull(Line(both, "Torque wrench 20 to 120 N·m"));
    }

    [Fact]
    public void No_torque_in_the_sheet_is_said()
    {
        var figures = Sheet.Figures.Where(f => f.Key != "oil.drain-plug").ToDictionary();
        var kit = Bench.Kit(["drain-plug"], Sheet with { Figures = figures }, null);
        Assert.Equal("Drain plug: the figure sheet has no torque; look it up first.", Line(kit, "Torque wrench").Note);
    }

    /// <summary>
    /// JCGM 106:2012, 7: a range T is decided when T ≥ 3.92·u. Steel rule: u = √(1²/12 + 0.5²/3) = 0.4082 mm, so 1.6 mm; the plug gap of
    /// 0.8 to 0.9 mm (T = 0.1) is beyond it, the pedal play of 5 to 12 mm is not.
    /// </summary>
    [Fact]
    public void What_the_usual_instrument_cannot_decide_is_read_with_the_coarsest_that_can()
    {
        var gap = Bench.Book.Points["rear-pedal-play"] with { Id = "gap", JudgedBy = "plug.gap" };
        var kit = For([gap]);
        var line = Assert.Single(kit.Lines, l => l.Kind == KitKind.Instrument);
        Assert.Contains(
            "The rule cannot decide this with Steel rule 300 mm: it reads to ± 0.82 mm, and the maker allows 0.8 to 0.9 mm",
            line.Note
        );
        // u of feeler gauges: √(0.05²/12 + 0.01²/3) = 0.0155 mm; the dial gauge, 0.0119 mm, and the micrometer, 0.0037 mm, are finer
        Assert.Equal("Feeler gauges", line.Item);
        Assert.Contains("Take Feeler gauges, or Dial gauge on its stand or Micrometer 25 mm.", line.Note);
        Assert.Equal("Steel rule 300 mm", Assert.Single(For(["rear-pedal-play"]).Lines).Item);
    }

    [Theory]
    [InlineData(1.60, false)]
    [InlineData(1.61, true)]
    public void The_border_lies_at_3_92_standard_uncertainties(double width, bool decides)
    {
        var kit = WithFigure("rear-pedal-play", Range(5, 5 + width));
        Assert.Equal(decides, Line(kit, "Steel rule 300 mm", orNull: true) is not null);
    }

    [Fact]
    public void A_single_limit_is_decided_where_something_plausible_can_be_proven()
    {
        // pads: at least 1.5 mm, plausible up to 15 mm and more; a rule proves 4 mm
        Assert.Equal("Calliper 150 mm", Line(For(["front-pads"]), "Calliper 150 mm").Item);
        // spread of a chain: at most 0.3 mm; even a spread of none reads to ± 1.15 mm
        var kit = WithFigure("chain-round", Range(null, 0.3));
        Assert.DoesNotContain(kit.Lines, l => l.Item == "Steel rule 300 mm");
    }

    // the handbook's axle-difference: one pair of the demo's calliper cannot tell 0.5 mm, three of each can
    [Fact]
    public void Where_only_repeats_decide_they_are_asked_for() =>
        Assert.Equal(
            $"{Title("axle-alignment")}: three readings a side, one does not decide it.",
            Line(WithFigure("axle-alignment", Range(null, 0.25)), "Calliper 150 mm").Note
        );

    [Fact]
    public void A_scale_that_ends_before_the_figure_does_is_not_taken()
    {
        var kit = WithFigure("front-disc", Range(null, 30));
        Assert.DoesNotContain(kit.Lines, l => l.Item == "Micrometer 25 mm");
        Assert.Contains(kit.Lines, l => l.Note.Contains("Micrometer 25 mm does not reach"));
    }

    [Fact]
    public void An_overdue_instrument_is_not_offered_at_a_safety_point_and_an_undated_one_is_told()
    {
        ShopInstrument Late(ShopInstrument i) => i.Id == "steel-rule" ? i with { Due = Day.AddDays(-1) } : i;
        var line = Assert.Single(With(Late, "chain-slack").Lines, l => l.Kind == KitKind.Instrument);
        Assert.NotEqual("Steel rule 300 mm", line.Item);
        Assert.Contains("Steel rule 300 mm had to be checked by 2026-11-24.", line.Note);
        ShopInstrument Undated(ShopInstrument i) => i.Id == "steel-rule" ? i with { Checked = null } : i;
        Assert.Equal(
            "Steel rule 300 mm: no date on record of its last check.",
            Line(With(Undated, "chain-slack"), "Steel rule 300 mm").Note
        );
    }

    [Fact]
    public void With_nothing_that_can_decide_it_is_a_shortage()
    {
        var kit = WithFigure("rear-pedal-play", Range(5, 5.0001));
        var shortage = Assert.Single(kit.Shortages);
        Assert.Equal(("Steel rule 300 mm", "none that will do"), (shortage.Item, shortage.There));
        Assert.EndsWith("borrow a finer one, or one in calibration.", shortage.Why);
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
        foreach (var plan in Bench.Book.Purposes.Values)
            Assert.All(
                For([.. plan.Select(p => p.Point)], Shelf.Empty).Lines,
                l => Assert.True(l is { Item.Length: > 0, Quantity.Length: > 0, For.Count: > 0 })
            );
    }

    private static string Said(KitLine line) => $"{line.Item}: {line.Quantity} for {string.Join(' ', line.For)}";

    private static string Title(string point) => Bench.Book.Points[point].Title;

    private static KitLine Line(Witnessmark.Bench.Kit.Kit kit, string item, bool orNull = false) =>
        orNull ? kit.Lines.SingleOrDefault(l => l.Item == item)! : Assert.Single(kit.Lines, l => l.Item == item);

    private static StockMove Came(string item, decimal amount, string? size = null) =>
        new($"{item}{size}{amount}", StockMoveKind.Received, new(item, size), amount, "Ines Tallow", "2026-11-25");

    private static Figure Range(double? min, double? max) =>
        new(
            "x",
            FigureKind.Range,
            UnitTable.Named("mm"),
            min,
            max,
            null,
            "",
            null,
            null,
            new(OriginKind.Maker, "p. 1")
        );

    private static Witnessmark.Bench.Kit.Kit For(string[] points, Shelf? stock = null, string? job = null) =>
        For([.. points.Select(p => Bench.Book.Points[p])], stock, job);

    private static Witnessmark.Bench.Kit.Kit For(Point[] points, Shelf? stock = null, string? job = null) =>
        Witnessmark.Bench.Kit.Kit.For(points, Sheet, Bench.Workshop, stock, Day, job);

    private static Witnessmark.Bench.Kit.Kit Of(Workshop shop, Point point) =>
        Witnessmark.Bench.Kit.Kit.For([point], Sheet, shop, null, Day);

    private static Witnessmark.Bench.Kit.Kit WithFigure(string point, Figure figure)
    {
        var key = Bench.Book.Points[point].JudgedBy!;
        var figures = Sheet.Figures.ToDictionary();
        figures[key] = figure;
        return Bench.Kit([point], Sheet with { Figures = figures }, null);
    }

    private static Workshop Without(string instrument) =>
        Bench.Workshop with
        {
            Instruments = Bench.Workshop.Instruments.Where(i => i.Key != instrument).ToDictionary(),
        };

    private static Witnessmark.Bench.Kit.Kit With(Func<ShopInstrument, ShopInstrument> change, string point) =>
        Of(
            Bench.Workshop with
            {
                Instruments = Bench.Workshop.Instruments.ToDictionary(i => i.Key, i => change(i.Value)),
            },
            Bench.Book.Points[point]
        );
}

file static class OfBench
{
    public static Witnessmark.Bench.Kit.Kit Kit(
        this Workbench bench,
        string[] points,
        FigureSheet sheet,
        Shelf? stock
    ) =>
        Witnessmark.Bench.Kit.Kit.For(
            points.Select(p => bench.Book.Points[p]),
            sheet,
            bench.Workshop,
            stock,
            new(2026, 11, 25)
        );
}
