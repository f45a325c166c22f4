using Witnessmark.Bench.Record;

namespace Witnessmark.Bench.Jobs;

/// <summary>A fact about when a job is done; it bears on no point.</summary>
public abstract record DayFact(Entry Entry) : Fact(Entry);

/// <summary>The machine was promised.</summary>
public sealed record PromiseFact(Entry Entry, DateTime At) : DayFact(Entry);

/// <summary>Parts are on their way.</summary>
public sealed record PartsFact(Entry Entry, DateTime Arrive, string? What) : DayFact(Entry);

/// <summary>The job was placed in the day plan by hand.</summary>
public sealed record PlacedFact(Entry Entry, string Technician, DateTime Start) : DayFact(Entry);

/// <summary>What was said last about when a job is done.</summary>
/// <param name="Promise">Until when it is promised, or null.</param>
/// <param name="Parts">When its parts arrive, or null.</param>
/// <param name="Placed">Where a hand has put it, or null.</param>
public sealed record JobDay(PromiseFact? Promise, PartsFact? Parts, PlacedFact? Placed)
{
    internal static JobDay Of(IReadOnlyList<Fact> live) =>
        new(
            live.OfType<PromiseFact>().LastOrDefault(),
            live.OfType<PartsFact>().LastOrDefault(),
            live.OfType<PlacedFact>().LastOrDefault()
        );
}
