using Witnessmark.Bench.Book;
using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Judging;
using Witnessmark.Bench.Record;
using Witnessmark.Handbook.Quantities;
using static Witnessmark.Paper.Tests.Bench640;

namespace Witnessmark.Paper.Tests;

/// <summary>A whole invented visit: measured, tightened, seen, left and noted.</summary>
internal static class FullJob
{
    public static readonly DateOnly Day = new(2026, 11, 27);

    public static JobState Released { get; } = Of(Points(), []) with { Release = Signed("Ines Marlow") };

    public static JobState Held { get; } =
        Of(
            [
                .. Points().Skip(1),
                State(
                    Slack,
                    Figure(13, 32),
                    Stripe.Outside,
                    Reading(50, 1.2, Figure(13, 32), VerdictWord.Outside, Rule)
                ),
                State(Point("coolant", "Coolant level", ReadingKind.Level), Figure(0, 1, null, "1"), Stripe.Unread),
            ],
            [
                new Hold("chain-slack", Stripe.Outside, $"Chain slack, lower run: outside by 18 mm"),
                new Hold("coolant", Stripe.Unread, $"Coolant level: not read yet"),
            ]
        );

    public static JobState Of(IReadOnlyList<PointState> points, IReadOnlyList<Hold> holds) =>
        new(
            "412",
            Bench640.Arrival,
            points,
            holds,
            null,
            [JobNote("Owner asks for a lower seat next time.")],
            [],
            Chain()
        );

    public static Release Signed(string name) => new(Fact(EntryKind.Release, new { name }), name);

    private static Point Slack => Point("chain-slack", "Chain slack, lower run", ReadingKind.Marks);

    private static Note JobNote(string text) => new(Fact(EntryKind.Note, new { text }), text);

    /// <summary>Real entries of one device, bound to each other.</summary>
    public static IReadOnlyList<Entry> Chain()
    {
        var entries = new List<Entry>();
        foreach (var raw in (string[])["50 mm", "31 mm", "25 mm"])
        {
            var body = EntryBody.Reading("chain-slack", [raw], null, "rule");
            var at = "2026-11-27T09:12:00+00:00";
            var id = $"e{entries.Count + 1}";
            var draft = new EntryDraft(
                id,
                "harrow-lane",
                "412",
                EntryKind.Reading,
                body,
                null,
                null,
                at,
                "Ines Marlow"
            );
            entries.Add(Entries.Sealed(draft, "bench-1", 1, entries.Count + 1, entries.LastOrDefault()?.Hash));
        }
        return entries;
    }

    private static List<PointState> Points()
    {
        var slack = Figure(13, 32);
        var axle = Figure(null, 0.5, new Origin(OriginKind.CommonPractice, ""));
        var spread = Figure(null, 6, new Origin(OriginKind.Shop, ""));
        var pads = Figure(1.5, null);
        var tread = Figure(1, null, new Origin(OriginKind.Law, "United Kingdom, C&U Regulations 1986, reg. 27"));
        var level = Figure(0, 1, null, "1");
        var torque = new Figure("t", FigureKind.Torque, UnitTable.Named("N·m"), null, null, 110, "", null, null, Maker);
        var tighten = Point("axle-nut", "Axle nut", ReadingKind.Tighten);
        var turned = Fact(EntryKind.Correction, new { point = "chain-slack" });
        return
        [
            State(
                Slack,
                slack,
                Stripe.Marked,
                Reading(50, 1.2, slack, VerdictWord.Outside),
                Reading(31, 1.2, slack, VerdictWord.Unproven),
                Reading(25, 1.2, slack, VerdictWord.Inside, Rule)
            ) with
            {
                Corrections =
                [
                    new CorrectionMade(turned, 2, 2, null, $"both adjusters 2 turns tighter"),
                    new CorrectionMade(turned, 0.5, 0.5, null, $"both adjusters ½ turn tighter"),
                ],
            },
            State(
                Point("chain-round", "Chain once round", ReadingKind.Round),
                spread,
                Stripe.Marked,
                Reading(4, 1.2, spread, VerdictWord.Inside, Rule)
            ),
            State(
                Point("axle", "Axle, left against right", ReadingKind.Sides),
                axle,
                Stripe.Marked,
                Reading(0.9, 0.11, axle, VerdictWord.Outside),
                Reading(0.2, 0.11, axle)
            ),
            State(
                Point("front-pads", "Front pads, thinnest"),
                pads,
                Stripe.MarkedClose,
                Reading(1.9, 0.12, pads, VerdictWord.Close)
            ),
            State(
                Point("tyre-rear-tread", "Rear tyre tread", ReadingKind.Places),
                tread,
                Stripe.Marked,
                Reading(5.1, 0.2, tread)
            ),
            State(
                Point("oil-level", "Oil level, warm", ReadingKind.Level, false),
                level,
                Stripe.Marked,
                Reading(0.1, 0.1, level, VerdictWord.Unproven),
                Reading(0.75, 0.1, level)
            ) with
            {
                Corrections = [new CorrectionMade(turned, null, null, 0.28, $"0.28 L added")],
            },
            State(tighten, torque, Stripe.Marked, Reading(110, null, torque, VerdictWord.Inside, Wrench)),
            State(
                Point("drain-plug", "Drain plug", ReadingKind.Tighten),
                torque with
                {
                    Value = 24,
                },
                Stripe.Marked,
                Reading(24, null, torque, VerdictWord.Inside, Wrench)
            ),
            State(Point("identity", "Identity", ReadingKind.Vin), null, Stripe.Marked, Told("XHLFE640000000412")),
            State(Point("distance", "Distance ridden", ReadingKind.Value, false), null, Stripe.Marked, Told("4812 km")),
            State(
                Point("tyre-dates", "Tyre dates", ReadingKind.TyreDate),
                Figure(null, 3650, new Origin(OriginKind.CommonPractice, ""), "day"),
                Stripe.Marked,
                Told("front week 31 of 2023, rear week 30 of 2023")
            ),
            State(Point("leaks", "Leaks after the road test", ReadingKind.Seen), null, Stripe.Marked, Told("yes")),
            State(
                Point("mirrors", "Mirrors and lights", ReadingKind.Seen, false),
                null,
                Stripe.Left,
                Told("no", VerdictWord.Outside)
            ) with
            {
                Left = (Fact(EntryKind.Left, new { point = "mirrors" }), "left mirror scratched, owner knows"),
                Notes = [JobNote("Scratch on the left mirror is old.")],
            },
        ];
    }
}
