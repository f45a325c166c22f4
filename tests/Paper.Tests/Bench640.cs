using System.Globalization;
using System.Text.Json;
using Witnessmark.Bench.Book;
using Witnessmark.Bench.Corrections;
using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Judging;
using Witnessmark.Bench.Machines;
using Witnessmark.Bench.Record;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Paper.Tests;

/// <summary>States of an invented job, put together by hand.</summary>
internal static class Bench640
{
    public static readonly Unit Millimetre = UnitTable.Named("mm");
    public static readonly Origin Maker = new(OriginKind.Maker, "handbook p. 87");

    public static readonly FigureSheet Sheet = new(
        "fell-640",
        "Fell 640",
        "2023-2026",
        "chain",
        2,
        4,
        new Dictionary<string, SheetDocument> { ["handbook"] = new("Fell 640 owner's handbook", "2, 2024") },
        new Dictionary<string, Figure>(),
        new Dictionary<string, Written>(),
        new Dictionary<string, string>(),
        [],
        []
    );

    public static readonly Machine Machine = new(
        "fell-640-0412",
        "Fell 640",
        "XHLFE640000000412",
        2024,
        "fell-640",
        4812,
        new DateOnly(2026, 11, 20)
    );

    public static readonly Arrival Arrival = new(
        Machine,
        Sheet,
        "handover",
        "2026-11-27T16:00",
        "2026-11-27T08:10:00+00:00",
        "Ines Marlow"
    );

    public static readonly ShopInstrument Rule = new("rule", "steel rule", Millimetre, 1, 0.5, 0, 0, null, "measure");

    public static readonly ShopInstrument Wrench = new(
        "wrench-3",
        "wrench 3",
        UnitTable.Named("N·m"),
        1,
        0.04,
        0,
        0,
        new DateOnly(2026, 8, 3),
        "torque"
    );

    public static readonly Workbench Workbench = new(
        new Workshop(
            "harrow-lane",
            "Harrow Lane Motorcycles",
            ["Ines Marlow"],
            new Dictionary<string, ShopInstrument> { [Rule.Id] = Rule, [Wrench.Id] = Wrench },
            new Dictionary<string, Machine> { [Machine.Id] = Machine }
        ),
        new BenchBook(
            new Dictionary<string, Point>(),
            new Dictionary<string, IReadOnlyList<PlannedPoint>>(),
            new Dictionary<string, ReachState>(),
            new Dictionary<string, FigureKey>()
        ),
        [Sheet]
    );

    public static Point Point(string id, string title, ReadingKind kind = ReadingKind.Value, bool safety = true) =>
        new(
            id,
            "final-drive",
            title,
            safety,
            [],
            new ReadingForm(kind, Millimetre, "Read it.", [], 0, null, null, null, null),
            id,
            null,
            TimeSpan.FromMinutes(4),
            TimeSpan.Zero,
            [],
            null,
            [],
            new Dictionary<string, string>(),
            new OnlyFor(new Dictionary<string, IReadOnlyList<string>>()),
            [],
            [],
            [],
            null
        );

    public static Figure Figure(double? min, double? max, Origin? origin = null, string unit = "mm")
    {
        var kind =
            min is null ? FigureKind.Max
            : max is null ? FigureKind.Min
            : FigureKind.Range;
        return new("figure", kind, UnitTable.Named(unit), min, max, null, "", null, null, origin ?? Maker);
    }

    public static PointState State(Point point, Figure? figure, Stripe stripe, params ReadingTaken[] readings) =>
        new(
            point,
            "every handover",
            figure,
            stripe,
            readings,
            [],
            stripe is Stripe.Again || readings.Length == 0 ? null : readings[^1],
            null,
            stripe is Stripe.Marked or Stripe.MarkedClose ? Fact(EntryKind.Mark, new { point = point.Id }) : null,
            null,
            [],
            []
        );

    public static ReadingTaken Reading(
        double value,
        double? uncertainty,
        Figure? figure,
        VerdictWord verdict = VerdictWord.Inside,
        ShopInstrument? instrument = null,
        IReadOnlyList<double>? series = null
    )
    {
        var unit = figure?.Unit ?? Millimetre;
        var symbol = unit.Symbol == "1" ? "" : $" {unit}";
        var digits = value.ToString("0.######", CultureInfo.InvariantCulture);
        var spread = uncertainty is { } u ? string.Create(CultureInfo.InvariantCulture, $" ± {u:0.##}") : "";
        var opinion = new Opinion(
            verdict,
            value,
            uncertainty,
            uncertainty / 2,
            unit,
            figure?.Limit,
            $"{digits}{spread}{symbol}",
            Sentence.Of(verdict.ToString()),
            $"{digits}{spread}{symbol}.",
            [],
            series ?? []
        );
        return new(
            Fact(EntryKind.Reading, new { raw = new[] { $"{digits}{symbol}" } }),
            [$"{digits}{symbol}"],
            [],
            instrument,
            opinion
        );
    }

    /// <summary>A reading of what is seen, done or written down: nothing measured.</summary>
    public static ReadingTaken Told(string shown, VerdictWord verdict = VerdictWord.Inside) =>
        new(
            Fact(EntryKind.Reading, new { raw = new[] { shown } }),
            [shown],
            [],
            null,
            new Opinion(
                verdict,
                null,
                null,
                null,
                null,
                null,
                Sentence.Of(shown),
                Sentence.Of(verdict.ToString()),
                $"{shown}.",
                [],
                []
            )
        );

    public static Advice Expecting(double value, double deviation) =>
        new($"To bring it", $"Both adjusters", [], true, value, deviation, [], null, null);

    public static Entry Fact(string kind, object body, int seq = 1) =>
        new(
            $"e-{kind}-{seq}",
            "harrow-lane",
            "412",
            "bench-1",
            1,
            seq,
            kind,
            JsonSerializer.SerializeToElement(body),
            null,
            null,
            "2026-11-27T09:12:00+00:00",
            "Ines Marlow",
            null,
            new string('a', 64)
        );
}
