using Witnessmark.Bench.AtThePoint;
using Witnessmark.Bench.Book;

namespace Witnessmark.Bench.Jobs;

/// <summary>How the job began, with its points looked up in the bench book.</summary>
/// <param name="Arrival">Machine, sheet, purpose.</param>
/// <param name="Points">In bench order.</param>
/// <param name="UnknownPoints">Ids that the bench book does not have; they hold the job.</param>
internal sealed record Opening(
    Arrival Arrival,
    IReadOnlyList<(Point Point, string Why)> Points,
    IReadOnlyList<string> UnknownPoints
)
{
    /// <summary>
    /// Whether the arrival keeps what was known of the machine. Programs that did not do so knew no hold of campaigns either: what
    /// they released stays released.
    /// </summary>
    public bool KeepsMachine { get; private init; }

    public static (Opening? Opening, Sentence? Why) Of(ArrivalFact fact, Workbench bench)
    {
        if ((fact.Known ?? bench.Workshop.Machines.GetValueOrDefault(fact.Machine)) is not { } machine)
            return (null, $"the machine \"{fact.Machine}\" is not known here");
        if (bench.Sheet(fact.Sheet, fact.Revision) is not { } sheet)
            return (null, $"revision {fact.Revision} of the figure sheet \"{fact.Sheet}\" is not known here");
        var known = fact.Points.DistinctBy(p => p.Point).Where(p => bench.Book.Points.ContainsKey(p.Point));
        var arrival = new Arrival(
            machine,
            sheet,
            fact.Purpose,
            fact.Promised,
            fact.Entry.At,
            fact.Entry.By,
            fact.Campaigns
        );
        return (
            new(
                arrival,
                [.. known.Select(p => (bench.Book.Points[p.Point], p.Why))],
                [.. fact.Points.Select(p => p.Point).Where(p => !bench.Book.Points.ContainsKey(p))]
            )
            {
                KeepsMachine = fact.Known is not null,
                Vouching = fact.Vouching,
                Settling = fact.Settling,
                SecondCheck = fact.SecondCheck.ToHashSet(StringComparer.Ordinal),
            },
            null
        );
    }

    /// <summary>Whether somebody vouches before the job can be signed: not so in jobs of an earlier program.</summary>
    public bool Vouching { get; init; }

    /// <summary>Whether new parts are read again after their first ride: not so in jobs of an earlier program, whose release stays.</summary>
    public bool Settling { get; init; }

    /// <summary>Points that a second person reads again, as the shop had it when the job was opened.</summary>
    public IReadOnlySet<string> SecondCheck { get; init; } = new HashSet<string>();

    /// <summary>Figures that this job was given beside its sheet.</summary>
    public GivenFigures Given { get; init; } = GivenFigures.None;

    /// <summary>The figure that judges a point on this machine, or null.</summary>
    public Figures.Figure? Figure(Point point) =>
        point.JudgedBy is { } key
            ? Arrival.Sheet.Figures.GetValueOrDefault(key) ?? Given.Standing.GetValueOrDefault(key)?.Figure
            : null;

    /// <summary>The figure that was given beside the sheet and judges a point, or null.</summary>
    public GivenFigure? GivenAt(Point point) =>
        point.JudgedBy is { } key ? Given.Standing.GetValueOrDefault(key) : null;

    /// <summary>Whether the bench book has a point of that id, and this machine has it.</summary>
    public bool HasPoint(string id, Workbench bench) =>
        bench.Book.Points.TryGetValue(id, out var point) && bench.HasPoint(point, Arrival.Sheet, Arrival.Machine);

    /// <summary>The point of that id in this job, or null.</summary>
    public Point? Point(string id) => Points.FirstOrDefault(p => p.Point.Id == id).Point;
}
