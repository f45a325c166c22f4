using Witnessmark.Bench.AtThePoint;
using Witnessmark.Bench.Campaigns;
using Witnessmark.Bench.Findings;
using Witnessmark.Bench.Judging;
using Witnessmark.Bench.Machines;
using Witnessmark.Bench.Record;
using Witnessmark.Bench.Visits;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Jobs;

/// <summary>An entry whose body was understood.</summary>
/// <param name="Entry">The entry.</param>
public abstract record Fact(Entry Entry)
{
    /// <summary>The point it is about; empty for facts about the whole job.</summary>
    public string Point { get; init; } = "";
}

/// <summary>The job was opened.</summary>
public sealed record ArrivalFact(
    Entry Entry,
    string Machine,
    string Sheet,
    int Revision,
    string Purpose,
    IReadOnlyList<(string Point, string Why)> Points,
    string? Promised,
    IReadOnlyList<FoundCampaign>? Campaigns,
    Machine? Known,
    bool Vouching,
    bool Settling
) : Fact(Entry)
{
    /// <summary>Points that a second person reads again; empty in jobs of an earlier program.</summary>
    public IReadOnlyList<string> SecondCheck { get; init; } = [];
}

/// <summary>Something was read.</summary>
public sealed record ReadingFact(
    Entry Entry,
    IReadOnlyList<string> Raw,
    IReadOnlyList<string> Places,
    string? Instrument
) : Fact(Entry)
{
    /// <summary>What the device says of a reading that it took by itself, or null.</summary>
    public DeviceReading? Device { get; init; }
}

/// <summary>A second person read a point without seeing what the first one had read.</summary>
public sealed record SecondReadingFact(Entry Entry, ReadingFact Reading) : Fact(Entry);

/// <summary>Something was corrected.</summary>
public sealed record CorrectionFact(Entry Entry, double? Left, double? Right, double? AddedLitres, string? Did)
    : Fact(Entry);

/// <summary>A point was marked.</summary>
public sealed record MarkFact(Entry Entry) : Fact(Entry);

/// <summary>A point was left as it is.</summary>
public sealed record LeftFact(Entry Entry, string Why) : Fact(Entry);

/// <summary>Somebody noted something.</summary>
public sealed record NoteFact(Entry Entry, string Text) : Fact(Entry);

/// <summary>An entry was taken back.</summary>
public sealed record StrikeFact(Entry Entry, string Why) : Fact(Entry);

/// <summary>A campaign was settled.</summary>
public sealed record CampaignFact(Entry Entry, string Number, CampaignOutcome Outcome, string? Why) : Fact(Entry);

/// <summary>A "do not ride" campaign is left open by decision.</summary>
public sealed record CampaignLeftFact(Entry Entry, string Number, string Why) : Fact(Entry);

/// <summary>A point was taken into the plan.</summary>
public sealed record PlannedFact(Entry Entry, string Why) : Fact(Entry);

/// <summary>A point was taken out of the plan.</summary>
public sealed record DroppedFact(Entry Entry, string Why, string? Lead) : Fact(Entry);

/// <summary>The job was signed.</summary>
public sealed record ReleaseFact(Entry Entry, string Name, bool OfTwo) : Fact(Entry);

/// <summary>Reads the bodies of entries.</summary>
public static class Facts
{
    /// <summary>The fact, or why the entry says nothing that is understood.</summary>
    public static (Fact? Fact, Sentence? Why) Of(Entry entry)
    {
        try
        {
            return (Read(entry, new Body(entry.Body)), null);
        }
        catch (NotUnderstood notUnderstood)
        {
            return (null, notUnderstood.Why);
        }
    }

    /// <summary>What an arrival says of its job as a whole, without its points; null when it is not understood.</summary>
    internal static ArrivalHead? Head(Entry arrival)
    {
        try
        {
            var body = new Body(arrival.Body);
            var (machine, sheet) = (body.Text("machine"), body.Text("sheet"));
            var known = body.Has(KnownMachine.Key) ? Known(machine, sheet, body.Inside(KnownMachine.Key)) : null;
            return new(machine, sheet, body.Whole("revision"), body.Text("purpose"), known);
        }
        catch (NotUnderstood)
        {
            return null;
        }
    }

    private static Fact Read(Entry entry, Body body) =>
        entry.Kind switch
        {
            EntryKind.Arrival => Arrival(entry, body),
            EntryKind.Reading => Reading(entry, body),
            EntryKind.SecondReading => new SecondReadingFact(entry, Reading(entry, body))
            {
                Point = body.Text("point"),
            },
            EntryKind.Correction => Correction(entry, body),
            EntryKind.Mark => new MarkFact(entry) { Point = body.Text("point") },
            EntryKind.Left => new LeftFact(entry, body.Text("why")) { Point = body.Text("point") },
            EntryKind.Note => new NoteFact(entry, body.Text("text")) { Point = body.TextOrNone("point") ?? "" },
            EntryKind.Strike when entry.Strikes is not null => new StrikeFact(entry, body.Text("why")),
            EntryKind.Strike => throw new NotUnderstood($"a strike that names no entry"),
            EntryKind.Campaign => new CampaignFact(
                entry,
                body.Text("number"),
                Outcome(body.Text("outcome")),
                body.TextOrNone("why")
            ),
            EntryKind.CampaignLeft => new CampaignLeftFact(entry, body.Text("number"), body.Text("why")),
            EntryKind.Figure => GivenFacts.Figure(entry, body),
            EntryKind.Vouch => GivenFacts.Vouch(entry, body),
            EntryKind.Photograph => GivenFacts.Photograph(entry, body),
            EntryKind.Planned => new PlannedFact(entry, body.Text("why")) { Point = body.Text("point") },
            EntryKind.Dropped => new DroppedFact(entry, body.Text("why"), body.TextOrNone("lead"))
            {
                Point = body.Text("point"),
            },
            EntryKind.Finding => FindingFacts.Finding(entry, body),
            EntryKind.Estimate => FindingFacts.Estimate(entry, body),
            EntryKind.Decision => FindingFacts.Decision(entry, body),
            EntryKind.PutRight => FindingFacts.PutRight(entry, body),
            EntryKind.Release => new ReleaseFact(entry, body.Text("name"), body.Has("ofTwo") && body.Truth("ofTwo")),
            EntryKind.Promise => new PromiseFact(entry, body.Moment("at")),
            EntryKind.Parts => new PartsFact(entry, body.Moment("arrive"), body.TextOrNone("what")),
            EntryKind.Placed => new PlacedFact(entry, body.Text("technician"), body.Moment("start")),
            _ => throw new NotUnderstood($"the kind \"{entry.Kind}\" is not known to this program"),
        };

    private static ReadingFact Reading(Entry entry, Body body) =>
        new(entry, body.Texts("raw"), body.TextsOrNone("places"), body.TextOrNone("with"))
        {
            Point = body.Text("point"),
            Device = body.ObjectOrNone("device") is { } device ? Device(device) : null,
        };

    private static DeviceReading Device(Body body)
    {
        var (sense, uncertainty) = (body.Text("sense"), body.Text("uncertainty"));
        if (!DeviceReading.Words.TryGetValue(sense, out var known))
            throw new NotUnderstood($"sense: \"{sense}\" is not known to this program");
        if (Written.Read(uncertainty, out var written) is { } why)
            throw new NotUnderstood($"uncertainty: \"{uncertainty}\": {why}");
        return written.Value >= 0
            ? new(known, written)
            : throw new NotUnderstood($"uncertainty: \"{uncertainty}\" is less than nothing");
    }

    private static ArrivalFact Arrival(Entry entry, Body body) =>
        new(
            entry,
            body.Text("machine"),
            body.Text("sheet"),
            body.Whole("revision"),
            body.Text("purpose"),
            [.. body.Objects("points").Select(p => (p.Text("point"), p.Text("why")))],
            body.TextOrNone("promised"),
            body.Has("campaigns") ? [.. body.Objects("campaigns").Select(Found)] : null,
            body.Has(KnownMachine.Key)
                ? Known(body.Text("machine"), body.Text("sheet"), body.Inside(KnownMachine.Key))
                : null,
            body.Has("vouching") && body.Truth("vouching"),
            body.Has("settling") && body.Truth("settling")
        )
        {
            SecondCheck = body.TextsOrNone("secondCheck"),
        };

    private static Machine Known(string id, string sheet, Body body) =>
        new(
            id,
            body.Text("name"),
            body.TextOrNone("vin") ?? "",
            body.Has("year") ? body.Whole("year") : null,
            sheet,
            body.KilometresOrNone("distance"),
            KnownMachine.Day(body.TextOrNone("distanceOn")),
            body.Has("facts") ? body.Inside("facts").TextsByName() : null,
            body.TextOrNone("make"),
            body.TextOrNone("frame"),
            body.TextOrNone("plate")
        );

    private static FoundCampaign Found(Body body) =>
        new(
            body.Text("number"),
            body.Text("component"),
            body.Truth("certain"),
            body.Truth("doNotRide"),
            body.Truth("parkOutside")
        );

    private static CampaignOutcome Outcome(string word) =>
        word switch
        {
            EntryBody.CampaignDone => CampaignOutcome.Done,
            EntryBody.CampaignNotConcerned => CampaignOutcome.NotConcerned,
            _ => throw new NotUnderstood($"outcome: \"{word}\" is neither done nor not-concerned"),
        };

    private static CorrectionFact Correction(Entry entry, Body body)
    {
        var both = body.NumberOrNone("turns");
        return new(
            entry,
            both ?? body.NumberOrNone("left"),
            both ?? body.NumberOrNone("right"),
            body.LitresOrNone("added"),
            body.TextOrNone("did")
        )
        {
            Point = body.Text("point"),
        };
    }
}
