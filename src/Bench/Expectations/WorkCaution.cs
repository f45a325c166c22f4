using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Jobs;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Expectations;

/// <summary>A caution that follows from work of this job.</summary>
/// <param name="Words">In a sentence or two, with what the record says.</param>
/// <param name="Origin">Who asks for it: the sheet's figure where there is one, else common practice.</param>
public sealed record WorkCaution(Sentence Words, Origin Origin)
{
    /// <summary>Who asks for it, as it stands behind the words.</summary>
    public Sentence Source =>
        Origin.Kind == OriginKind.CommonPractice ? (Sentence)$"common practice, no source"
        : Origin.Place.Length > 0 ? (Sentence)$"{Origin.Who}, {Origin.Place}"
        : Origin.Who;

    /// <summary>Whether it is the one of a new chain, beside which that of an adjusted one says nothing.</summary>
    internal bool NewChain { get; init; }
}

/// <summary>The cautions of a job, in the order of its points. Common practice, no source, unless a figure of the sheet says how far.</summary>
internal static class WorkCautions
{
    /// <summary>Figures of a sheet that say how far a caution reaches.</summary>
    internal const string Pads = "after-work.pads";
    internal const string Tyre = "after-work.tyre";
    internal const string Chain = "after-work.chain";
    internal const string Engine = "after-work.engine";

    private static readonly string[] InsideTheEngine =
    [
        "piston",
        "pistons",
        "ring",
        "rings",
        "cylinder",
        "cylinders",
        "bearing",
        "bearings",
        "crankshaft",
        "camshaft",
    ];

    public static IEnumerable<WorkCaution> Of(JobState job)
    {
        var sheet = job.Arrival?.Sheet;
        List<WorkCaution> said = [];
        foreach (var point in job.Points)
            if (Renewals.Of(point) is { } renewed && New(point, renewed, sheet) is { } caution)
                said.Add(caution);
        if (job.Points.FirstOrDefault(ChainMoved) is { } chain && said.All(c => !c.NewChain))
            said.Add(
                Caution(
                    $"The chain was adjusted ({chain.Corrections[^1].Words}): have its slack looked at again after {Far(sheet, Chain, $"the first rides")}.",
                    sheet,
                    Chain
                )
            );
        if (job.Points.Any(p => p.Corrections.Any(c => c.AddedLitres is not null) && Is(p, "oil")) || Filled(job))
            said.Add(
                Caution(
                    $"Engine oil was put in: look at the level, and under the engine for drops, before the next ride.",
                    sheet,
                    null
                )
            );
        return said.DistinctBy(c => c.Words);
    }

    private static WorkCaution? New(PointState point, Sentence renewed, FigureSheet? sheet) =>
        Is(point, "pads") || Is(point, "shoes")
            ? Caution(
                $"{point.Point.Title}: new ({renewed}). Pump lever and pedal until firm before it moves; brake gently and early over {Far(sheet, Pads, $"the first rides")}, until they have bedded in.",
                sheet,
                Pads
            )
        : Is(point, "tyre") && (Is(point, "tread") || Is(point, "fit"))
            ? Caution(
                $"{point.Point.Title}: new tyre ({renewed}). Ride gently and upright over {Far(sheet, Tyre, $"the first rides")}, until its surface has worn in.",
                sheet,
                Tyre
            )
        : Is(point, "chain") && point.Point.Region == "final-drive"
            ? Caution(
                $"The chain is new ({renewed}): it gives at first. Have its slack looked at again after {Far(sheet, Chain, $"the first rides")}.",
                sheet,
                Chain
            ) with
            {
                NewChain = true,
            }
        : point.Point.Region == "engine" && Renewals.Words(renewed).Any(InsideTheEngine.Contains)
            ? Caution(
                $"{point.Point.Title}: {renewed}. Run the engine in: changing speed, no full load, over {Far(sheet, Engine, $"its first distance")}; then oil and filter are looked at again.",
                sheet,
                Engine
            )
        : null;

    private static bool ChainMoved(PointState point) =>
        point.Point is { CorrectedBy: "chain-adjustment" } or { Id: "chain-slack" }
        && point.Corrections.Any(c => c.Left is not null || c.Right is not null);

    private static bool Filled(JobState job) =>
        job.Points.Any(p =>
            p.Marked is not null
            && p.Point.Consumables.Any(c => c.What.StartsWith($"engine oil", StringComparison.OrdinalIgnoreCase))
        );

    private static bool Is(PointState point, string part) => point.Point.Id.Split('-').Contains(part);

    /// <summary>As far as the sheet says, or in words.</summary>
    private static Sentence Far(FigureSheet? sheet, string key, Sentence words) =>
        Figure(sheet, key) is { } figure ? Sentence.Number(figure.AsPrinted) : words;

    private static WorkCaution Caution(Sentence words, FigureSheet? sheet, string? key) =>
        new(words, Figure(sheet, key)?.Origin ?? new(OriginKind.CommonPractice, ""));

    private static Figure? Figure(FigureSheet? sheet, string? key) =>
        key is not null && sheet?.Figures.GetValueOrDefault(key) is { Unit.Dimension: Dimension.Length } figure
            ? figure
            : null;
}
