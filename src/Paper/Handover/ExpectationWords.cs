using Witnessmark.Bench.Expectations;
using Witnessmark.Bench.Figures;
using Witnessmark.Handbook.Due;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Paper.Handover;

/// <summary>What is to be expected, in words for whoever rides the machine.</summary>
public static class ExpectationWords
{
    /// <summary>Where the sheet says nothing of when.</summary>
    public static Sentence NoSchedule =>
        $"The figure sheet has no schedule: when the next service is due stands in the maker's manual.";

    /// <summary>When a line of the schedule comes: <c>at 22380 km or by 25 November 2027, whichever comes first</c>.</summary>
    public static Sentence When(ServiceAhead service, Unit odometer)
    {
        Sentence? distance = service.AtKilometres is { } km ? (Sentence)$"at {Distances.Shown(km, odometer)}" : null;
        Sentence? day = service.ByDay is { } on ? (Sentence)$"by {SheetHead.Day(on)}" : null;
        Sentence? when =
            distance is not null && day is not null
                ? (Sentence)$"{distance} or {day}, whichever comes first"
                : distance ?? day;
        Sentence? state = service.State switch
        {
            DueState.Overdue => $"overdue",
            DueState.Due when when is not null => $"due now",
            _ => null,
        };
        return Sentence.List(((Sentence?[])[state, when, service.Unknown]).OfType<Sentence>(), "; ");
    }

    /// <summary>Who asks for it, and how often.</summary>
    public static Sentence AskedBy(ServiceAhead service) => $"every {service.Every}; {Who(service.Origin)}";

    /// <summary>What the distances rest on, where this job did not read the odometer.</summary>
    public static Sentence? NotRead(Outlook expected) =>
        expected.NotReadSince is { } day
            ? (Sentence)$"Counted from the distance of {SheetHead.Day(day)}: the odometer was not read in this visit."
            : null;

    /// <summary>Forecasts that say something, each with its cautions.</summary>
    public static IEnumerable<(Sentence Words, IReadOnlyList<Sentence> Cautions)> Told(Outlook expected) =>
        expected
            .Wear.Where(w => w.Forecast.Tells)
            .Select(w => ((Sentence)$"{w.Point.Title}, limit {w.Limit}: {w.Forecast.Words}", w.Forecast.Cautions));

    /// <summary>Wearing parts of which nothing can be foretold, by the reason.</summary>
    public static IEnumerable<Sentence> NotTold(Outlook expected) =>
        expected
            .Wear.Where(w => !w.Forecast.Tells)
            .GroupBy(w => w.Forecast.Words)
            .Select(g => (Sentence)$"No forecast yet for {Sentence.List(g.Select(w => w.Point.Title), "; ")}. {g.Key}");

    /// <summary>A caution with who asks for it.</summary>
    public static Sentence Of(WorkCaution caution) => $"{caution.Words} ({caution.Source})";

    private static Sentence Who(Origin origin) =>
        origin.Place.Length > 0 ? (Sentence)$"{origin.Who}, {origin.Place}" : origin.Who;
}
