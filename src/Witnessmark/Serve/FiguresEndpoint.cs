using Witnessmark.Bench.Figures;
using Witnessmark.Doors;

namespace Witnessmark.Serve;

/// <summary>A figure as a person set it on a screen.</summary>
/// <param name="Revision">The revision that they looked at.</param>
/// <param name="Demand"><c>range</c>, <c>min</c>, …</param>
/// <param name="Printed">As it is printed.</param>
/// <param name="Origin">Where it comes from.</param>
/// <param name="By">Who.</param>
/// <param name="Why">In their words.</param>
/// <param name="Tolerance">Or null.</param>
/// <param name="Unit">Or null.</param>
/// <param name="Also">Or null.</param>
/// <param name="When">Or null.</param>
/// <param name="Bolt">Or null.</param>
public sealed record FigureSet(
    int Revision,
    string Demand,
    string Printed,
    string Origin,
    string By,
    string Why,
    string? Tolerance = null,
    string? Unit = null,
    string? Also = null,
    string? When = null,
    string? Bolt = null
);

/// <summary>Figures are set one at a time; each makes a revision.</summary>
public static class FiguresEndpoint
{
    private const int LongestText = 400;

    /// <summary><c>PUT /api/sheets/{sheet}/figures/{key}</c></summary>
    public static IResult Put(string sheet, string key, FigureSet set, ServedShop shop, HttpContext context, Door door)
    {
        if (context.Who() is { } who && who.Person != set.By)
            return Failure.Said(403, $"by: \"{set.By}\" is not who is signed in, \"{who.Person}\".");
        if (Missing(set) is { } missing)
            return Failure.Said(400, missing);
        var draft = new FigureDraft(key, set.Demand, set.Printed, set.Origin)
        {
            Tolerance = set.Tolerance,
            Unit = set.Unit,
            Also = set.Also,
            When = set.When,
            Bolt = set.Bolt,
        };
        var (revision, why) = shop.SetFigure(sheet, set.Revision, draft, set.By, set.Why);
        if (revision is null)
            return Failure.Said(409, why!);
        if (context.Who() is { } lead)
            door.Note(DoorEvents.Changed, lead, BookLine.FigureSet(lead.Person, key, sheet, revision.Value));
        return Results.Json(new { Revision = revision });
    }

    private static Sentence? Missing(FigureSet set) =>
        !FigureDraft.Demands.Contains(set.Demand)
            ? (Sentence)$"demand \"{set.Demand}\": one of {string.Join(", ", FigureDraft.Demands)} is allowed."
        : string.IsNullOrWhiteSpace(set.By) ? (Sentence)$"by: a name is missing."
        : string.IsNullOrWhiteSpace(set.Why) ? (Sentence)$"why: a reason is missing."
        : new[] { set.Printed, set.Origin, set.By, set.Why, set.Tolerance, set.Also, set.When, set.Bolt }.Any(t =>
            t?.Length > LongestText
        )
            ? (Sentence)$"One of the texts is longer than {LongestText} characters."
        : null;
}
