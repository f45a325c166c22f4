using Witnessmark.Bench.Findings;
using Witnessmark.Bench.Jobs;
using Witnessmark.Paper.Pdf;

namespace Witnessmark.Paper.Handover;

/// <summary>The cautions: what follows from this job's work, and who has the last word.</summary>
public static class BeforeYouRide
{
    private const double Gutter = 14;

    /// <summary>The cautions, with the code that proves the sheet beside them.</summary>
    internal static void Write(Pages pages, JobState state, Cell code)
    {
        var width = code.X - Gutter;
        IReadOnlyList<Cell> row = [new(0, width, [.. Of(state).SelectMany(s => Hanging(s, width))]), code];
        pages.Begin("Before you ride", Pages.HeightOf(row, 2));
        pages.Row(row, 2, false);
        pages.End();
    }

    /// <summary>A dash before the first line, and the further lines under its text.</summary>
    private static IEnumerable<TextLine> Hanging(string sentence, double width) =>
        Cell.Of(0, width - 12, (sentence, Typeface.Body))
            .Lines.Select((l, i) => l with { Text = $"{(i == 0 ? "– " : "   ")}{l.Text}" });

    /// <summary>The sentences in order.</summary>
    public static IEnumerable<string> Of(JobState state)
    {
        if (!SheetHead.Released(state))
            yield return "Do not ride it: it has not been released.";
        foreach (var campaign in (state.CampaignsOpen ?? []).Where(c => c.DoNotRide).Select(c => c.Number).Distinct())
            yield return $"Do not ride it until the maker has spoken on campaign {campaign}: its notice says so.";
        foreach (var campaign in (state.CampaignsOpen ?? []).Where(c => c.ParkOutside).Select(c => c.Number).Distinct())
            yield return $"Park it outside, away from buildings, until campaign {campaign} is settled: its notice says so.";
        foreach (var dropped in state.Dropped.Where(d => d.Point.Safety))
            yield return $"{dropped.Point.Title} was not looked at in this visit, by decision of {dropped.Lead}: have it looked at.";
        foreach (var finding in state.Findings.Where(f => f is { Urgency: Urgency.BeforeRiding, IsPutRight: false }))
            yield return $"{FindingWords.Title(finding)}have it put right before you ride. {FindingWords.Meaning(finding)}";
        foreach (var finding in state.Findings.Where(f => f is { Urgency: Urgency.ByNextService, IsPutRight: false }))
            yield return $"{FindingWords.Title(finding)}have it put right by the next service.";
        foreach (var point in state.Points.Where(p => p.Stripe is Stripe.MarkedClose))
            yield return $"{point.Point.Title} is close to its limit: have it read again early.";
        // Common practice in the trade, no source: chains bed in, oil spreads into the filter, pads and tyres must be run in.
        if (Worked(state, "chain").Any(p => p.Corrections.Any(c => c.Left is not null || c.Right is not null)))
            yield return "The chain was adjusted: have its slack looked at again after the first rides.";
        if (
            Worked(state, "oil").Any(p => p.Corrections.Any(c => c.AddedLitres is not null))
            || Used(state, "engine oil")
        )
            yield return "Engine oil was put in: look at the level, and under the engine for drops, before the next ride.";
        if (Used(state, "brake pad"))
            yield return "The brake pads are new: pump lever and pedal until firm, and brake gently and early until they have bedded in.";
        if (Used(state, "tyre,") || Used(state, "tyre "))
            yield return "A tyre is new: ride gently until its surface has worn in.";
        yield return "Look at tyres, brakes, lights, chain and oil yourself before each ride.";
        yield return "The maker's manual and local law come before anything printed here.";
    }

    private static IEnumerable<PointState> Worked(JobState state, string subject) =>
        state.Points.Where(p => p.Point.Id.Contains(subject, StringComparison.Ordinal) && p.Corrections.Count > 0);

    /// <summary>Whether a point that takes this was done in this job.</summary>
    private static bool Used(JobState state, string consumable) =>
        state.Points.Any(p =>
            p.Marked is not null
            && p.Point.Consumables.Any(c => c.What.StartsWith(consumable, StringComparison.OrdinalIgnoreCase))
        );
}
