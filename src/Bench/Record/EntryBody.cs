using System.Text.Json;
using Witnessmark.Bench.Book;
using Witnessmark.Bench.Campaigns;
using Witnessmark.Bench.Day;
using Witnessmark.Bench.Judging;
using Witnessmark.Bench.Machines;

namespace Witnessmark.Bench.Record;

/// <summary>Builds the body of each kind of entry. Measured values are the text that was typed, never a number.</summary>
public static partial class EntryBody
{
    internal const string CampaignDone = "done";
    internal const string CampaignNotConcerned = "not-concerned";

    /// <summary>Opens a job: which machine, judged by which sheet in which revision, for what, with which points; campaigns null when they were not looked up.</summary>
    /// <param name="machine">Its id.</param>
    /// <param name="sheet">Id of its figure sheet.</param>
    /// <param name="revision">Of that sheet.</param>
    /// <param name="purpose">A purpose of the bench book.</param>
    /// <param name="points">In bench order.</param>
    /// <param name="promised">When it is to be collected, or null.</param>
    /// <param name="campaigns">What was found open.</param>
    /// <param name="known">What is known of the machine: kept with the job. Null only in entries of older programs.</param>
    /// <param name="secondCheck">Points that a second person reads again, as the shop has it now; null for none.</param>
    public static JsonElement Arrival(
        string machine,
        string sheet,
        int revision,
        string purpose,
        IEnumerable<PlannedPoint> points,
        string? promised = null,
        IReadOnlyList<FoundCampaign>? campaigns = null,
        Machine? known = null,
        IReadOnlyList<string>? secondCheck = null
    ) =>
        Object(json =>
        {
            json.WriteString("machine", machine);
            json.WriteString("sheet", sheet);
            json.WriteNumber("revision", revision);
            json.WriteString("purpose", purpose);
            json.WriteStartArray("points");
            foreach (var planned in points)
                Write(json, planned);
            json.WriteEndArray();
            Optional(json, "promised", promised);
            if (campaigns is not null)
                Write(json, campaigns);
            if (known is not null)
                KnownMachine.Write(json, known);
            json.WriteBoolean("vouching", true);
            json.WriteBoolean("settling", true);
            if (secondCheck is { Count: > 0 })
                Write(json, "secondCheck", secondCheck);
        });

    /// <summary>A reading as typed: <c>["75 mm", "25 mm"]</c>.</summary>
    /// <param name="point">Id of the point.</param>
    /// <param name="raw">Values with their units, or "yes"/"no" for things seen.</param>
    /// <param name="places">Where each was taken, or null.</param>
    /// <param name="instrument">Id of the instrument, or null.</param>
    /// <param name="sure">The technician has looked again at a value that seemed implausible.</param>
    /// <param name="device">What the device says of a reading that it took by itself, or null.</param>
    public static JsonElement Reading(
        string point,
        IEnumerable<string> raw,
        IEnumerable<string>? places = null,
        string? instrument = null,
        bool sure = false,
        DeviceReading? device = null
    ) =>
        Object(json =>
        {
            json.WriteString("point", point);
            Write(json, "raw", raw);
            if (places is not null)
                Write(json, "places", places);
            Optional(json, "with", instrument);
            if (sure)
                json.WriteBoolean("sure", true);
            if (device is not null)
                Write(json, device);
        });

    /// <summary>Both adjusters turned alike, or the only one; tightening positive.</summary>
    public static JsonElement Turns(string point, string turns) => Of(("point", point), ("turns", turns));

    /// <summary>Each adjuster turned by its own amount; tightening positive.</summary>
    public static JsonElement SideTurns(string point, string left, string right) =>
        Of(("point", point), ("left", left), ("right", right));

    /// <summary>Fluid put in: <c>0.28 L</c>.</summary>
    public static JsonElement Added(string point, string litres) => Of(("point", point), ("added", litres));

    /// <summary>A correction in words.</summary>
    public static JsonElement Did(string point, string text) => Of(("point", point), ("did", text));

    /// <summary>The painted stripe.</summary>
    public static JsonElement Mark(string point) => Of(("point", point));

    /// <summary>A point left as it is.</summary>
    public static JsonElement Left(string point, string why) => Of(("point", point), ("why", why));

    /// <summary>A note on a point, or on the job when <paramref name="point"/> is null.</summary>
    public static JsonElement Note(string? point, string text) => Of(("point", point), ("text", text));

    /// <summary>Why an entry is taken back; which one stands in the entry's field <c>strikes</c>.</summary>
    public static JsonElement Strike(string why) => Of(("why", why));

    /// <summary>A campaign that is settled.</summary>
    public static JsonElement Campaign(string number, CampaignOutcome outcome, string? why = null) =>
        Of(
            ("number", number),
            ("outcome", outcome == CampaignOutcome.Done ? CampaignDone : CampaignNotConcerned),
            ("why", why)
        );

    /// <summary>A "do not ride" campaign that somebody lets the machine leave with, for a reason, and on their word.</summary>
    public static JsonElement CampaignLeft(string number, string why, string? word = null) =>
        Of(("number", number), ("why", why), (Word.Key, word));

    /// <summary>A point taken into the plan.</summary>
    public static JsonElement Planned(string point, string why) => Of(("point", point), ("why", why));

    /// <summary>A point taken out of the plan; <paramref name="lead"/> stands for it when somebody's safety hangs on the point.</summary>
    /// <param name="point">The point.</param>
    /// <param name="why">The reason.</param>
    /// <param name="lead">Who stands for it, or null.</param>
    /// <param name="word">What the shop gave to that lead for showing who they are; null where nobody has to.</param>
    public static JsonElement Dropped(string point, string why, string? lead = null, string? word = null) =>
        Of(("point", point), ("why", why), ("lead", lead), (Word.Key, word));

    /// <summary>The signature that no hold is left.</summary>
    /// <param name="name">Who signs.</param>
    /// <param name="ofTwo">Whether it counts only beside that of a second person, as the shop had it when it was given.</param>
    /// <param name="confirmed">What the shop gave for showing again who one is; null where nobody has to.</param>
    public static JsonElement Release(string name, bool ofTwo = false, string? confirmed = null) =>
        Object(json =>
        {
            json.WriteString("name", name);
            if (ofTwo)
                json.WriteBoolean("ofTwo", true);
            if (confirmed is not null)
                json.WriteString("confirmed", confirmed);
        });

    /// <summary>Until when the machine is promised.</summary>
    public static JsonElement Promise(DateTime at) => Of(("at", ShopTime.Write(at)));

    /// <summary>When the last of its parts arrives, and which.</summary>
    public static JsonElement Parts(DateTime arrive, string? what = null) =>
        Of(("arrive", ShopTime.Write(arrive)), ("what", what));

    /// <summary>Placed in the day plan by hand.</summary>
    public static JsonElement Placed(string technician, DateTime start) =>
        Of(("technician", technician), ("start", ShopTime.Write(start)));

    private static JsonElement Of(params ReadOnlySpan<(string Name, string? Value)> members)
    {
        var kept = members.ToArray();
        return Object(json =>
        {
            foreach (var (name, value) in kept)
                Optional(json, name, value);
        });
    }

    private static JsonElement Object(Action<Utf8JsonWriter> members) =>
        EntryJson.Value(json =>
        {
            json.WriteStartObject();
            members(json);
            json.WriteEndObject();
        });

    private static void Optional(Utf8JsonWriter json, string name, string? value)
    {
        if (value is not null)
            json.WriteString(name, value);
    }

    private static void Write(Utf8JsonWriter json, string name, IEnumerable<string> values)
    {
        json.WriteStartArray(name);
        foreach (var value in values)
            json.WriteStringValue(value);
        json.WriteEndArray();
    }

    private static void Write(Utf8JsonWriter json, DeviceReading device)
    {
        json.WriteStartObject("device");
        json.WriteString("sense", device.Word);
        json.WriteString("uncertainty", device.InEntry);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, PlannedPoint planned)
    {
        json.WriteStartObject();
        json.WriteString("point", planned.Point);
        json.WriteString("why", planned.Why);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, IReadOnlyList<FoundCampaign> campaigns)
    {
        json.WriteStartArray("campaigns");
        foreach (var campaign in campaigns)
        {
            json.WriteStartObject();
            json.WriteString("number", campaign.Number);
            json.WriteString("component", campaign.Component);
            json.WriteBoolean("certain", campaign.Certain);
            json.WriteBoolean("doNotRide", campaign.DoNotRide);
            json.WriteBoolean("parkOutside", campaign.ParkOutside);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }
}
