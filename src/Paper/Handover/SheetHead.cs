using System.Globalization;
using Witnessmark.Bench.Jobs;
using Witnessmark.Handbook.Quantities;
using Witnessmark.Paper.Drawings;
using Witnessmark.Paper.Pdf;

namespace Witnessmark.Paper.Handover;

/// <summary>The top of the sheet: which machine, whether it may go, the strip, and what holds it.</summary>
internal static class SheetHead
{
    private const int StripesInRow = 40;
    private const double StripScale = 0.75;

    /// <summary>Whether the machine is released: a signature stands and nothing holds it.</summary>
    public static bool Released(JobState state) => state.Release is not null && state.MayGo;

    public static Sentence Title(JobState state) =>
        !Released(state) ? (Sentence)$"{Named(state)}, not released"
        : LeavesUnsafe(state) ? (Sentence)$"{Named(state)}, released, not safe to ride"
        : (Sentence)$"{Named(state)}, ready to ride";

    /// <summary>Whether it leaves by somebody's word although it should not be ridden: below the title stands why.</summary>
    private static bool LeavesUnsafe(JobState state) =>
        state.Findings.Any(f => f is { DeclinedBeforeRiding: true, IsPutRight: false })
        || (state.CampaignsOpen ?? []).Any(c => c.DoNotRide);

    /// <summary>The machine, or the job of one that is not known.</summary>
    public static Sentence Named(JobState state) =>
        state.Arrival is { Machine.Name: var name } ? Sentence.Of(name) : (Sentence)$"Job {state.Job}";

    public static void Write(Pages pages, JobState state, Workbench bench, DateOnly printedOn)
    {
        pages.Row(
            [
                Cell.Of(
                    0,
                    360,
                    (Title(state), Typeface.Title),
                    (Facts(state, printedOn), Typeface.Aside with { Size = 9 })
                ),
                Cell.Of(
                    372,
                    Pages.Width - 372,
                    (Sentence.Of(bench.Workshop.Name), Typeface.Strong),
                    ($"handover sheet", Typeface.Aside)
                ),
            ],
            0,
            false
        );
        pages.Gap(10);
        foreach (var part in state.Points.Select(p => p.Stripe).Chunk(StripesInRow))
        {
            var strip = StripDrawing.Of(part);
            pages.Row([Cell.Of(0, strip.Width * StripScale, strip)], 2, false);
        }
        var said = StripDrawing.Of([.. state.Points.Select(p => p.Stripe)]).Label;
        pages.Row([Cell.Of(0, Pages.Width, ($"{said}.", Typeface.Aside with { Size = 9 }))], 1, false);
        WriteHolds(pages, state);
    }

    internal static Sentence Facts(JobState state, DateOnly printedOn)
    {
        Sentence? vin = state.Arrival?.Machine.Vin is { Length: > 0 } v
            ? (Sentence)$"VIN ends {v[Math.Max(0, v.Length - 4)..]}"
            : null;
        Sentence?[] facts =
        [
            vin,
            Distance(state),
            Day(printedOn),
            $"job {state.Job}",
            state.Arrival is { Purpose: var purpose } ? Sentence.Of(purpose) : null,
        ];
        return Sentence.List(facts.OfType<Sentence>().Select(Cell.Whole), " · ");
    }

    /// <summary>As read in this job; else the last on record, with its day.</summary>
    private static Sentence? Distance(JobState state)
    {
        var read = state.Points.FirstOrDefault(p => p.Point.Id == "distance")?.Current;
        return read is not null ? PointWords.Shown(read)
            : state.Arrival?.Machine is { LastDistanceKilometres: { } last } machine
                ? machine.LastDistanceOn is { } on ? (Sentence)$"{OnRecord(last)} on record of {Day(on)}"
                    : (Sentence)$"{OnRecord(last)} on record"
            : null;
    }

    private static Sentence OnRecord(double kilometres) =>
        InUnits.Of(kilometres.ToString("0", CultureInfo.InvariantCulture), UnitTable.Named("km"));

    private static Sentence Unsigned(JobState state) =>
        state.SignedFirst is { } first
            ? (Sentence)$"Nothing is held any more; {first} signed the release, a second person has not yet."
            : (Sentence)$"Nothing is held any more; the release is not signed yet.";

    private static void WriteHolds(Pages pages, JobState state)
    {
        if (Released(state))
            return;
        pages.Begin($"What keeps it here", 20);
        if (state.Holds.Count == 0)
            pages.Row([Cell.Of(0, Pages.Width, (Unsigned(state), Typeface.Body))], 2);
        foreach (var hold in state.Holds)
            pages.Row([Stripe(hold.Stripe, 0), Cell.Of(20, Pages.Width - 20, (hold.Words, Typeface.Body))], 3);
        pages.End();
    }

    public static Cell Stripe(Stripe stripe, double x) => Cell.Of(x, 10, StripeDrawing.Of(stripe));

    public static Sentence Day(DateOnly day) => Sentence.Day(DayForm.Words, day);
}
