using Witnessmark.Bench.Findings;
using Witnessmark.Bench.Jobs;
using Witnessmark.Paper.Pdf;

namespace Witnessmark.Paper.Handover;

/// <summary>The cautions of the machine as it stands, and who has the last word. What follows from the work is told by <see cref="WhatToExpect"/>.</summary>
public static class BeforeYouRide
{
    /// <summary>The cautions in a column of this width.</summary>
    internal static Cell Column(JobState state, double width) =>
        Cell.Later(0, width, t => new(0, width, [.. Of(state).SelectMany(s => Hanging(s.In(t), width))]));

    /// <summary>A dash before the first line, and the further lines under its text.</summary>
    private static IEnumerable<TextLine> Hanging(string sentence, double width) =>
        Cell.Set(0, width - 12, [(sentence, Typeface.Body)])
            .Lines.Select((l, i) => l with { Text = $"{(i == 0 ? "– " : "   ")}{l.Text}" });

    /// <summary>The sentences in order.</summary>
    public static IEnumerable<Sentence> Of(JobState state)
    {
        if (!SheetHead.Released(state))
            yield return $"Do not ride it: it has not been released.";
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
        yield return $"Look at tyres, brakes, lights, chain and oil yourself before each ride.";
        yield return $"The maker's manual and local law come before anything printed here.";
    }
}
