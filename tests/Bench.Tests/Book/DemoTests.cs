using Witnessmark.Bench.Book;
using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Jobs;

namespace Witnessmark.Bench.Tests.Book;

public class DemoTests
{
    private static readonly string[] HandoverOrder =
    [
        "identity",
        "distance",
        "campaign-open",
        "tyre-front-tread",
        "tyre-rear-tread",
        "tyre-dates",
        "tyre-condition",
        "tyre-front-pressure",
        "tyre-rear-pressure",
        "front-pads",
        "rear-pads",
        "steering-head",
        "coolant-level",
        "chain-slack",
        "chain-round",
        "axle-alignment",
        "axle-nut",
        "engine-warm-up",
        "drain-plug",
        "oil-filter",
        "oil-first-fill",
        "oil-settle",
        "oil-level",
        "throttle-free-play",
        "idle-lock-to-lock",
        "mirrors-lights",
        "fasteners",
        "leaks",
        "brake-feel",
        "road-test",
        "leaks-after",
        "heat-after",
        "keys",
    ];

    [Fact]
    public void Book_and_demo_have_no_mistake() => Assert.Empty(WorkbenchFiles.Read(DemoFiles.All).Mistakes);

    [Fact]
    public void Handover_takes_its_points_in_bench_order_each_with_a_why()
    {
        var plan = DemoFiles.Bench.Book.Purposes["handover"];
        Assert.Equal(HandoverOrder, plan.Select(p => p.Point));
        Assert.All(plan, p => Assert.True(p.Why.Length > 10));
    }

    [Fact]
    public void A_range_with_fractions_beside_it_is_read_in_its_printed_unit()
    {
        var slack = DemoFiles.Bench.Newest("fell-640")!.Figures["chain.slack"];
        Assert.Equal((13.0, 32.0, "mm", FigureKind.Range), (slack.Min, slack.Max, slack.Unit.Symbol, slack.Kind));
        Assert.Equal(("½ to 1¼ in", "maker", "handbook p. 87"), (slack.Also, "maker", slack.Origin.Place));
    }

    [Fact]
    public void A_torque_an_amount_a_target_and_a_limit_are_read()
    {
        var figures = DemoFiles.Bench.Newest("fell-640")!.Figures;
        Assert.Equal(
            (110.0, null, null),
            (figures["axle.nut"].Value, figures["axle.nut"].Min, figures["axle.nut"].Max)
        );
        Assert.Equal((3.6, "US qt"), (figures["oil.capacity"].Value, figures["oil.capacity"].Unit.Symbol));
        var pressure = figures["tyre.pressure-front"];
        Assert.Equal((225.0, 255.0, 240.0), (pressure.Min, pressure.Max, pressure.Value));
        Assert.Equal(((double?)null, 0.5), (figures["axle.difference"].Min, figures["axle.difference"].Max));
    }

    [Fact]
    public void A_law_figure_cites_jurisdiction_and_clause()
    {
        var laws = DemoFiles
            .Bench.Sheets.SelectMany(s => s.Figures.Values)
            .Where(f => f.Origin.Kind == OriginKind.Law)
            .ToArray();
        Assert.NotEmpty(laws);
        Assert.All(laws, f => Assert.Matches("^[^,]+, .*reg\\. 27$", f.Origin.Place));
    }

    [Fact]
    public void Every_step_that_can_hurt_has_a_caution()
    {
        var safety = DemoFiles.Bench.Book.Points.Values.Where(p => p.Safety);
        Assert.All(safety, p => Assert.False(string.IsNullOrWhiteSpace(p.Caution), p.Id));
    }

    [Fact]
    public void Again_after_names_only_points_whose_work_comes_in_the_same_plan()
    {
        var book = DemoFiles.Bench.Book;
        var plans = book.Purposes.Values.Select(plan => plan.Select(p => p.Point).ToHashSet()).ToArray();
        Assert.All(
            book.Points.Values.SelectMany(p => p.AgainAfter, (p, a) => (p.Id, Again: a)),
            pair => Assert.Contains(plans, plan => plan.Contains(pair.Id) && plan.Contains(pair.Again))
        );
    }

    [Fact]
    public void Every_point_is_taken_by_a_purpose_and_every_why_is_a_sentence()
    {
        var book = DemoFiles.Bench.Book;
        Assert.True(book.Points.Count >= 90);
        Assert.Equal(
            ["handover", "service", "repair", "campaign", "restoration", "show", "storage", "recommissioning"],
            book.Purposes.Keys
        );
        var planned = book.Purposes.Values.SelectMany(p => p).ToArray();
        Assert.Empty(book.Points.Keys.Except(planned.Select(p => p.Point)));
        Assert.All(planned, p => Assert.Matches("^[A-Z].{9,}[.]$", p.Why));
    }

    [Fact]
    public void Every_figure_key_reach_and_instrument_of_the_book_is_used_and_known_to_the_demo_shop()
    {
        var bench = DemoFiles.Bench;
        var points = bench.Book.Points.Values;
        var keys = points
            .SelectMany(p => p.Figures.Append(p.JudgedBy).Concat(p.Consumables.Select(c => c.Figure)))
            .OfType<string>();
        Assert.Empty(bench.Book.FigureKeys.Keys.Except(keys));
        Assert.Empty(bench.Book.Reach.Keys.Except(points.SelectMany(p => p.Reach)));
        Assert.Empty(points.Select(p => p.Reading.Instrument).OfType<string>().Except(bench.Workshop.Instruments.Keys));
    }

    // a limit is the maker's, the law's or the shop's and stands in the sheet with its origin
    [Fact]
    public void No_point_gives_a_limit_of_its_own()
    {
        const string numberWithUnit = @"\d+([.,]\d+)?\s?(mm|N·m|kPa|bar|psi|V|km|°C|L|mL)\b";
        Assert.All(
            DemoFiles.Bench.Book.Points.Values,
            p => Assert.DoesNotMatch(numberWithUnit, $"{p.Title} {p.Reading.Words} {p.Caution}")
        );
    }

    // 49 CFR 565.15(c): letters to digits, weights by position, remainder by 11, X for ten
    [Fact]
    public void Check_digits_of_the_demo_machines_are_right()
    {
        const string letters = "ABCDEFGH JKLMN P R  STUVWXYZ";
        const string digits = "12345678 12345 7 9  23456789";
        int[] weights = [8, 7, 6, 5, 4, 3, 2, 10, 0, 9, 8, 7, 6, 5, 4, 3, 2];
        Assert.All(
            DemoFiles.Bench.Workshop.Machines.Values,
            m =>
            {
                var sum = m
                    .Vin.Zip(weights, (c, w) => (char.IsDigit(c) ? c - '0' : digits[letters.IndexOf(c)] - '0') * w)
                    .Sum();
                Assert.Equal("0123456789X"[sum % 11], m.Vin[8]);
            }
        );
    }

    [Fact]
    public void Instruments_and_settings_are_read_as_written()
    {
        var bench = DemoFiles.Bench;
        var calliper = bench.Workshop.Instruments["calliper"];
        Assert.Equal(
            (0.05, 0.08, 0.085, 2),
            (calliper.Resolution, calliper.PermissibleError, calliper.Replacing, calliper.Decimals)
        );
        var wrench = bench.Workshop.Instruments["torque-wrench-120"];
        Assert.Equal((0.04, 20.0, 120.0, "torque"), (wrench.PermissibleError, wrench.Min, wrench.Max, wrench.Kind));
        Assert.Equal("100 mm²", bench.Book.Points["axle-nut"].Settings["shift-prior-mean"]);
        Assert.Equal("true", bench.Newest("fell-640")!.Facts["axle-reading-grows-rearward"]);
        Assert.Equal(585, bench.Newest("fell-640")!.Geometry["centre-distance"].Value);
    }

    [Fact]
    public void Times_and_forms_are_read_as_written()
    {
        var points = DemoFiles.Bench.Book.Points;
        Assert.Equal(TimeSpan.FromMinutes(10), points["drain-plug"].Waits);
        var round = points["chain-round"].Reading;
        Assert.Equal((ReadingKind.Round, 12, "9 links"), (round.Kind, round.Count, round.Step));
        Assert.Equal(
            (1.0, 90.0),
            (points["chain-slack"].Reading.PlausibleMin, points["chain-slack"].Reading.PlausibleMax)
        );
    }
}
