using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Due;

/// <summary>What the odometer showed over the years: distances counted on over known replacements, and where it went back unexplained.</summary>
/// <remarks>
/// Total = what it showed + the sum of (from − to) of the replacements before. On the day of a replacement an entry belongs to the
/// odometer whose figure it lies nearer to. Between two entries whose total falls lies a break; entries of one day count in the order
/// of their totals, and today's comes last.
/// </remarks>
public sealed class OdometerHistory
{
    private readonly OdometerReplacement[] replaced;
    private readonly OdometerReading[] breaksAt;
    private readonly OdometerReading now;

    /// <summary>Puts the entries in order and finds where the total falls.</summary>
    /// <param name="entries">In any order, none after <paramref name="now"/>.</param>
    /// <param name="now">The last one.</param>
    /// <param name="replaced">Replacements that somebody wrote down.</param>
    public OdometerHistory(
        IEnumerable<OdometerReading> entries,
        OdometerReading now,
        IEnumerable<OdometerReplacement> replaced
    )
    {
        (this.now, this.replaced) = (now, [.. replaced]);
        var inOrder = entries.OrderBy(e => e.Date).ThenBy(e => TotalOf(e)).Append(now).ToArray();
        var pairs = inOrder.Zip(inOrder.Skip(1)).Where(p => TotalOf(p.Second) < TotalOf(p.First)).ToArray();
        Breaks = [.. pairs.Select(p => new OdometerBreak(p.Second.Date, p.First.Distance, p.Second.Distance))];
        breaksAt = [.. pairs.Select(p => p.Second)];
        Now = TotalOf(now);
        Fitted = Now - now.Distance.Millimetres;
    }

    /// <summary>Where it went back and nobody said why.</summary>
    public IReadOnlyList<OdometerBreak> Breaks { get; }

    /// <summary>Total now, in mm.</summary>
    public double Now { get; }

    /// <summary>What a total is more than the odometer now fitted shows, in mm.</summary>
    public double Fitted { get; }

    /// <summary>The total that belongs to an entry, in mm.</summary>
    public double TotalOf(OdometerReading entry)
    {
        var lost = 0.0;
        foreach (var r in replaced)
            if (IsBefore(r, entry))
                lost += (r.From - r.To).Millimetres;
        return entry.Distance.Millimetres + lost;
    }

    /// <summary>Whether the distance from an entry until now can be told: no break lies between.</summary>
    public bool Reaches(OdometerReading entry) =>
        breaksAt.Length == 0
        || entry.Date > breaksAt[^1].Date
        || (entry.Date == breaksAt[^1].Date && TotalOf(entry) >= TotalOf(breaksAt[^1]) && TotalOf(entry) <= Now);

    /// <summary>Whether the odometer was replaced between an entry and now.</summary>
    public bool Replaced(OdometerReading entry) => replaced.Any(r => IsBefore(r, entry) != IsBefore(r, now));

    private static bool IsBefore(OdometerReplacement r, OdometerReading entry) =>
        entry.Date > r.Date || (entry.Date == r.Date && NearerToNew(entry.Distance, r));

    private static bool NearerToNew(Length shown, OdometerReplacement r) =>
        Math.Abs((shown - r.To).Millimetres) < Math.Abs((shown - r.From).Millimetres);
}

/// <summary>What the odometer showed on a day.</summary>
/// <param name="Date">The day.</param>
/// <param name="Distance">Zero or more.</param>
public readonly record struct OdometerReading(DateOnly Date, Length Distance);

/// <summary>An odometer that was replaced, or set, by somebody who wrote it down.</summary>
/// <param name="Date">The day.</param>
/// <param name="From">What the old one showed last.</param>
/// <param name="To">What the new one showed first.</param>
public readonly record struct OdometerReplacement(DateOnly Date, Length From, Length To);

/// <summary>An odometer that went back without a word.</summary>
/// <param name="Date">The day on which it was seen.</param>
/// <param name="From">What it had shown before.</param>
/// <param name="To">What it showed that day.</param>
public readonly record struct OdometerBreak(DateOnly Date, Length From, Length To)
{
    /// <summary>What to say of it.</summary>
    public Sentence Why => DueWords.Of(this);
}
