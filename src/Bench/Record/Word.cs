using System.Text.Json;

namespace Witnessmark.Bench.Record;

/// <summary>
/// Whose word an entry counts by, and for what: where the shop's door is closed the shop is shown that it is theirs, and what it gives for that stands in the
/// entry. Without it anybody could write another's name.
/// </summary>
/// <param name="Kind">The kind of entry.</param>
/// <param name="Name">Whose word it is.</param>
/// <param name="About">What it is given for, in the entry's own texts: the point, the figure, the campaign.</param>
public sealed record Word(string Kind, string Name, IReadOnlyList<string> About)
{
    /// <summary>The member of a body that holds what the shop gave.</summary>
    public const string Key = "confirmed";

    /// <summary>A lead stands for dropping a safety point.</summary>
    public static Word OfDrop(string lead, string point) => new(EntryKind.Dropped, lead, [point]);

    /// <summary>Somebody answers for a figure at a point.</summary>
    public static Word OfVouching(string name, string point, string figure) =>
        new(EntryKind.Vouch, name, [point, figure]);

    /// <summary>Somebody lets a machine leave with a campaign open.</summary>
    public static Word OfLeaving(string name, string number) => new(EntryKind.CampaignLeft, name, [number]);

    /// <summary>The word that an entry counts by; null when it counts by nobody's, or says nothing that could be counted.</summary>
    /// <param name="kind">Its kind.</param>
    /// <param name="by">Who wrote it.</param>
    /// <param name="body">Its body as it came.</param>
    public static Word? Of(string kind, string by, JsonElement body) =>
        kind switch
        {
            // without a lead's name a safety point is not dropped, and any other needs none
            EntryKind.Dropped when RawText.In(body, "lead") is { } lead && RawText.In(body, "point") is { } point =>
                OfDrop(lead, point),
            EntryKind.Vouch
                when RawText.In(body, "name") is { } name
                    && RawText.In(body, "point") is { } point
                    && RawText.In(body, "figure") is { } figure => OfVouching(name, point, figure),
            EntryKind.CampaignLeft when RawText.In(body, "number") is { } number => OfLeaving(by, number),
            _ => null,
        };
}
