using System.Text.Json;

namespace Witnessmark.Bench.Record;

/// <summary>One fact in the ledger. Never changed, never deleted; a wrong one is struck by a later one.</summary>
/// <param name="Id">Unique, made by the device.</param>
/// <param name="Shop">The workshop.</param>
/// <param name="Job">The job it belongs to.</param>
/// <param name="Device">The device that wrote it.</param>
/// <param name="Epoch">Counts up when the device's storage was wiped; a new epoch starts a new chain.</param>
/// <param name="Seq">Gapless from 1 on the device in its epoch; this orders entries, never the clock.</param>
/// <param name="Kind">One of <see cref="EntryKind"/>; an unknown kind is kept and not understood.</param>
/// <param name="Body">An object by kind; readings as the decimal text that was typed.</param>
/// <param name="Strikes">Id of the entry that this one takes back, or null.</param>
/// <param name="Covers">What else the writer had seen of this job: highest seq by <c>device/epoch</c>; null when nothing.</param>
/// <param name="At">The device's clock, ISO 8601; recorded, never trusted.</param>
/// <param name="By">The person.</param>
/// <param name="DevicePrevious">Hash of the device's previous entry in this epoch, or null for the first.</param>
/// <param name="Hash">SHA-256 of the canonical JSON of all of the above, in lower-case hex.</param>
public sealed record Entry(
    string Id,
    string Shop,
    string Job,
    string Device,
    int Epoch,
    int Seq,
    string Kind,
    JsonElement Body,
    string? Strikes,
    IReadOnlyDictionary<string, int>? Covers,
    string At,
    string By,
    string? DevicePrevious,
    string Hash
)
{
    /// <summary>The chain it stands in: <c>device/epoch</c>.</summary>
    public string Chain => $"{Device}/{Epoch}";
}

/// <summary>The kinds of entries and what their bodies hold.</summary>
public static class EntryKind
{
    /// <summary><c>{machine, sheet, revision, purpose, points: [{point, why}], promised?, campaigns?: [{number, component, certain, doNotRide, parkOutside}], vouching?: true, settling?: true, secondCheck?: [point, …], known?: {name, vin?, frame?, plate?, make?, year?, distance?: "12400 km", distanceOn?: "2026-02-14", facts?: {…}}}</c>: opens the job; without campaigns they were not looked up; without known the machine is the one of shop.toml.</summary>
    public const string Arrival = "arrival";

    /// <summary><c>{point, raw: ["75 mm", …], places?: […], with?: instrument, sure?: true, device?: {sense: "microphone"|"inclination", uncertainty: "0.05 Hz"}}</c>: with the device's own senses its uncertainty comes with it, one standard deviation; sides put <c>left</c>/<c>right</c> in places; things seen are "yes"/"no".</summary>
    public const string Reading = "reading";

    /// <summary><c>{point, raw, places?, with?, sure?, device?}</c>, as a reading: a second person's, who had not been shown the first one's.</summary>
    public const string SecondReading = "second-reading";

    /// <summary><c>{point, turns: "2"}</c> both adjusters, or <c>{point, left: "0.13", right: "-0.6"}</c>, or <c>{point, added: "0.28 L"}</c>, or <c>{point, did: "text"}</c>.</summary>
    public const string Correction = "correction";

    /// <summary><c>{point}</c>: the painted stripe.</summary>
    public const string Mark = "mark";

    /// <summary><c>{point, why}</c>: a point that is not safety, left as it is.</summary>
    public const string Left = "left";

    /// <summary><c>{point?, text}</c>.</summary>
    public const string Note = "note";

    /// <summary><c>{why}</c>, with <see cref="Entry.Strikes"/> set.</summary>
    public const string Strike = "strike";

    /// <summary><c>{number, outcome: "done"|"not-concerned", why?}</c>: a campaign that is settled.</summary>
    public const string Campaign = "campaign";

    /// <summary><c>{number, why, confirmed?}</c>: the machine may leave with this "do not ride" campaign open, by decision of the one who wrote it.</summary>
    public const string CampaignLeft = "campaign-left";

    /// <summary><c>{point, key, demand, printed, origin, tolerance?, unit?, also?, when?, bolt?, document?: {name, title, edition}}</c>: a figure for this job alone, where its sheet has none for the key.</summary>
    public const string Figure = "figure";

    /// <summary><c>{point, name, figure, confirmed?}</c>: somebody answers by name for judging a safety point by this figure, as it stood in one line.</summary>
    public const string Vouch = "vouch";

    /// <summary><c>{point?, figure?: key, sha256, type, width, height, bytes, shows}</c>: a photograph of the machine, of a point, or of where a figure stands.</summary>
    public const string Photograph = "photograph";

    /// <summary><c>{point, why}</c>: a point taken into the plan after the arrival.</summary>
    public const string Planned = "planned";

    /// <summary><c>{point, why, lead?, confirmed?}</c>: a point taken out of the plan; a safety point needs the name of a lead.</summary>
    public const string Dropped = "dropped";

    /// <summary><c>{finding, point?, what, urgency: "before riding"|"by next service"|"keep an eye on", photographs?: [sha256, …]}</c>: something to tell the owner; the last one of the same name counts.</summary>
    public const string Finding = "finding";

    /// <summary><c>{finding, currency, rate: "78.00", tax: "19", minutes, parts: [{item, quantity: "2", price: "12.50", tax?}]}</c>: what putting it right is expected to cost, with the terms of that day; the last one counts.</summary>
    public const string Estimate = "estimate";

    /// <summary><c>{finding, what, urgency, total?: "123.45 EUR", decision: "approved"|"declined", name, means: "signature"|"in person"|"telephone"|"message", acknowledged?: true, signature?: path data}</c>: the owner's word; it covers what the owner was told and nothing else.</summary>
    public const string Decision = "decision";

    /// <summary><c>{finding, how}</c>: somebody put it right.</summary>
    public const string PutRight = "put-right";

    /// <summary><c>{name, ofTwo?, confirmed?}</c>: the signature that no hold is left.</summary>
    public const string Release = "release";

    /// <summary><c>{at: "2026-11-27T16:00"}</c>: until when the machine is promised, by the shop's clock; the last one holds.</summary>
    public const string Promise = "promise";

    /// <summary><c>{arrive: "2026-11-27T10:30", what?}</c>: when the last of its parts comes; the last one holds.</summary>
    public const string Parts = "parts";

    /// <summary><c>{technician, start: "2026-11-27T08:00"}</c>: placed in the day plan by hand; the last one holds.</summary>
    public const string Placed = "placed";
}
