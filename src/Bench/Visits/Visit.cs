using System.Globalization;
using System.Text.Json;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Judging;
using Witnessmark.Bench.Machines;
using Witnessmark.Bench.Record;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Visits;

/// <summary>
/// One visit of a machine as its entries tell it. The job is not folded for it: a machine with hundreds of visits opens at once, and what a
/// visit holds point by point is looked up only when it is asked for.
/// </summary>
public sealed class Visit
{
    private readonly IReadOnlyCollection<Entry> entries;
    private IReadOnlyList<(string Point, Entry Entry)>? live;
    private IReadOnlyList<string>? readAt;
    private (double? Value, bool IsKnown) kilometres;

    private Visit(string job, Entry arrival, ArrivalHead head, IReadOnlyCollection<Entry> entries) =>
        (Job, Arrival, Head, this.entries, Day) = (job, arrival, head, entries, DayOf(arrival));

    /// <summary>The job's number.</summary>
    public string Job { get; }

    /// <summary>The entry that opened it.</summary>
    public Entry Arrival { get; }

    /// <summary>What that entry says of the job as a whole.</summary>
    public ArrivalHead Head { get; }

    /// <summary>The day by the device's clock; null when that says nothing readable.</summary>
    public DateOnly? Day { get; }

    /// <summary>What the odometer showed; null when nobody read it.</summary>
    public double? Kilometres
    {
        get
        {
            if (!kilometres.IsKnown)
                kilometres = (Odometer(), true);
            return kilometres.Value;
        }
    }

    /// <summary>The points at which something was read, each once.</summary>
    public IReadOnlyList<string> ReadAt =>
        readAt ??= [.. Live.Where(e => e.Entry.Kind == EntryKind.Reading).Select(e => e.Point).Distinct()];

    /// <summary>Readings and corrections that nobody struck, each with its point, in order.</summary>
    public IReadOnlyList<(string Point, Entry Entry)> Live => live ??= Unstruck();

    /// <summary>The visit that the entries of a job tell of; null while its arrival is missing or not understood.</summary>
    public static Visit? Of(string job, IReadOnlyCollection<Entry> entries)
    {
        foreach (var entry in entries)
            if (entry.Kind == EntryKind.Arrival && Facts.Head(entry) is { } head)
                return new(job, entry, head, entries);
        return null;
    }

    /// <summary>The day of an entry by its device's clock.</summary>
    public static DateOnly? DayOf(Entry entry) =>
        DateTimeOffset.TryParse(entry.At, CultureInfo.InvariantCulture, DateTimeStyles.None, out var time)
            ? DateOnly.FromDateTime(time.DateTime)
            : null;

    private double? Odometer() =>
        Live.LastOrDefault(e => e.Point == MeasuredJudge.Distance && e.Entry.Kind == EntryKind.Reading).Entry
            is { } read
        && Facts.Of(read).Fact is ReadingFact { Raw: [var raw, ..] }
            ? RawValue.In(raw, UnitTable.Named("km"), out _)
            : null;

    private List<(string, Entry)> Unstruck()
    {
        var ordered = entries.All(e => e.Chain == Arrival.Chain)
            ? [.. entries.OrderBy(e => e.Seq)]
            : CausalOrder.Of(entries);
        var struck = Struck(ordered);
        List<(string, Entry)> unstruck = [];
        foreach (var entry in ordered)
            if (entry.Kind is EntryKind.Reading or EntryKind.Correction && PointOf(entry) is { } point)
                if (!struck.Contains(entry.Id))
                    unstruck.Add((point, entry));
        return unstruck;
    }

    // from the last to the first, as Strikes does over facts
    private static HashSet<string> Struck(IReadOnlyList<Entry> ordered)
    {
        HashSet<string> struck = new(StringComparer.Ordinal);
        for (var i = ordered.Count - 1; i >= 0; i--)
            if (ordered[i] is { Kind: EntryKind.Strike, Strikes: { } taken } && !struck.Contains(ordered[i].Id))
                struck.Add(taken);
        return struck;
    }

    private static string? PointOf(Entry entry) =>
        entry.Body.ValueKind == JsonValueKind.Object
        && entry.Body.TryGetProperty("point", out var point)
        && point.ValueKind == JsonValueKind.String
            ? point.GetString()
            : null;
}

/// <summary>What an arrival says of its job as a whole.</summary>
/// <param name="Machine">Id of the machine.</param>
/// <param name="Sheet">Id of the figure sheet that judges it.</param>
/// <param name="Revision">Of that sheet.</param>
/// <param name="Purpose">What the machine came for.</param>
/// <param name="Known">What was known of the machine; null in entries of older programs.</param>
public sealed record ArrivalHead(string Machine, string Sheet, int Revision, string Purpose, Machine? Known);
