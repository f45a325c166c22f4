using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Kit;
using Witnessmark.Bench.Machines;
using Witnessmark.Handbook.Fasteners;
using Witnessmark.Handbook.Quantities;
using static Witnessmark.Bench.Tests.Kit.DemoKit;

namespace Witnessmark.Bench.Tests.Kit;

/// <summary>Wrenches, adapters and instruments: situations written by hand on the demo machine.</summary>
public class KitToolTests
{
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
            Line(kit, "Torque wrench 20 to 120 N·m")
                .Note.ToString()
                .Replace(Title("steering-head-nut"), "Steering head, preload")
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
        var safety = Of(Gone(), Demo.Book.Points["drain-plug"]);
        Assert.Contains(
            "Old torque wrench 10 to 60 N·m had to be checked by 2025-02-12.",
            Assert.Single(safety.Shortages).Why
        );
        var use = Of(Gone(), Demo.Book.Points["drain-plug"] with { Safety = false });
        Assert.Empty(use.Shortages);
        Assert.Equal(
            "Drain plug: set 29 N·m. Old torque wrench 10 to 60 N·m had to be checked by 2025-02-12.",
            Line(use, "Old torque wrench 10 to 60 N·m").Note
        );
        // one in date goes first though the old one reaches less far
        var both = Of(Demo.Workshop, Demo.Book.Points["drain-plug"] with { Safety = false });
        Assert.NotNull(Line(both, "Torque wrench 20 to 120 N·m"));
    }

    [Fact]
    public void No_torque_in_the_sheet_is_said()
    {
        var figures = Sheet.Figures.Where(f => f.Key != "oil.drain-plug").ToDictionary();
        var kit = WithSheet(["drain-plug"], Sheet with { Figures = figures }, null);
        Assert.Equal("Drain plug: the figure sheet has no torque; look it up first.", Line(kit, "Torque wrench").Note);
    }

    /// <summary>
    /// JCGM 106:2012, 7: a range T is decided when T ≥ 3.92·u. Steel rule: u = √(1²/12 + 0.5²/3) = 0.4082 mm, so 1.6 mm; the plug gap of
    /// 0.8 to 0.9 mm (T = 0.1) is beyond it, the pedal play of 5 to 12 mm is not.
    /// </summary>
    [Fact]
    public void What_the_usual_instrument_cannot_decide_is_read_with_the_coarsest_that_can()
    {
        var gap = Demo.Book.Points["rear-pedal-play"] with { Id = "gap", JudgedBy = "plug.gap" };
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
        Assert.Contains(kit.Lines, l => l.Note.ToString().Contains("Micrometer 25 mm does not reach"));
    }

    [Fact]
    public void An_overdue_instrument_is_not_offered_at_a_safety_point_and_an_undated_one_is_told()
    {
        ShopInstrument Late(ShopInstrument i) => i.Id == "steel-rule" ? i with { Due = DemoKit.Day.AddDays(-1) } : i;
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
}
