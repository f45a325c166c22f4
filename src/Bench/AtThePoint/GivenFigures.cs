using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Record;

namespace Witnessmark.Bench.AtThePoint;

/// <summary>
/// The figures that stand beside a job's sheet. Of those for one key the last one counts; two that were given at the same
/// time and differ count for nothing until somebody who has seen both gives it again or takes one back.
/// </summary>
/// <param name="Standing">By key.</param>
/// <param name="Disputed">By key, what was given at the same time.</param>
internal sealed record GivenFigures(
    IReadOnlyDictionary<string, GivenFigure> Standing,
    IReadOnlyDictionary<string, IReadOnlyList<GivenFigure>> Disputed
)
{
    public static GivenFigures None { get; } =
        new(new Dictionary<string, GivenFigure>(), new Dictionary<string, IReadOnlyList<GivenFigure>>());

    public static GivenFigures Of(IReadOnlyList<Fact> live, Opening opening, List<(Entry, Sentence)> notUnderstood)
    {
        List<GivenFigure> given = [];
        foreach (var fact in live.OfType<FigureFact>())
        {
            var (figure, why) = Read(fact, opening);
            if (figure is not null)
                given.Add(figure);
            else
                notUnderstood.Add((fact.Entry, why!));
        }
        var last = given.GroupBy(g => g.Figure.Key).ToDictionary(g => g.Key, NotSeenByALater);
        return new(
            last.Where(k => Agree(k.Value)).ToDictionary(k => k.Key, k => k.Value[^1]),
            last.Where(k => !Agree(k.Value)).ToDictionary(k => k.Key, k => k.Value)
        );
    }

    private static (GivenFigure? Given, Sentence? Why) Read(FigureFact fact, Opening opening)
    {
        if (opening.Point(fact.Point) is not { } point)
            return (null, $"\"{fact.Point}\" is no point of this job");
        var (figure, why) = GivenFigure.Read(fact.Draft, fact.Document, point, opening.Arrival.Sheet);
        return figure is null ? (null, why) : (new(fact.Entry, point.Id, figure, fact.Document), null);
    }

    private static IReadOnlyList<GivenFigure> NotSeenByALater(IEnumerable<GivenFigure> given)
    {
        var all = given.ToList();
        return [.. all.Where(g => !all.Any(later => CausalOrder.Saw(later.Entry, g.Entry)))];
    }

    private static bool Agree(IReadOnlyList<GivenFigure> given) =>
        given.Select(g => g.Figure.InSheet).Distinct().Count() == 1;
}
