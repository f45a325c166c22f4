using System.Globalization;
using Witnessmark.Bench.Jobs;
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

    public static string Title(JobState state) =>
        $"{state.Arrival?.Machine.Name ?? $"Job {state.Job}"}, {(Released(state) ? "ready to ride" : "not released")}";

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
                    (bench.Workshop.Name, Typeface.Strong),
                    ("handover sheet", Typeface.Aside)
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

    internal static string Facts(JobState state, DateOnly printedOn)
    {
        var vin = state.Arrival?.Machine.Vin is { Length: > 0 } v ? $"VIN ends {v[Math.Max(0, v.Length - 4)..]}" : null;
        string?[] facts = [vin, Distance(state), Day(printedOn), $"job {state.Job}", state.Arrival?.Purpose];
        return string.Join(" · ", facts.OfType<string>().Select(Cell.Whole));
    }

    /// <summary>As read in this job; else the last on record, with its day.</summary>
    private static string? Distance(JobState state)
    {
        var read = state.Points.FirstOrDefault(p => p.Point.Id == "distance")?.Current;
        return read is not null ? PointWords.Shown(read)
            : state.Arrival?.Machine is { LastDistanceKilometres: { } last } machine
                ? $"{last.ToString("0", CultureInfo.InvariantCulture)} km on record{(machine.LastDistanceOn is { } on ? $" of {Day(on)}" : "")}"
            : null;
    }

    private static string Unsigned(JobState state) =>
        state.SignedFirst is { } first
            ? $"Nothing is held any more; {first} signed the release, a second person has not yet."
            : "Nothing is held any more; the release is not signed yet.";

    private static void WriteHolds(Pages pages, JobState state)
    {
        if (Released(state))
            return;
        pages.Begin("What keeps it here", 20);
        if (state.Holds.Count == 0)
            pages.Row([Cell.Of(0, Pages.Width, (Unsigned(state), Typeface.Body))], 2);
        foreach (var hold in state.Holds)
            pages.Row([Stripe(hold.Stripe, 0), Cell.Of(20, Pages.Width - 20, (hold.Words, Typeface.Body))], 3);
        pages.End();
    }

    public static Cell Stripe(Stripe stripe, double x) => Cell.Of(x, 10, StripeDrawing.Of(stripe));

    public static string Day(DateOnly day) => day.ToString("d MMMM yyyy", CultureInfo.InvariantCulture);
}
