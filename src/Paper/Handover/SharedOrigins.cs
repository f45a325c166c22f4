using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Jobs;
using Witnessmark.Paper.Pdf;

namespace Witnessmark.Paper.Handover;

/// <summary>Laws and standards that several rows of a table rest on: their long names stand once, under the table.</summary>
internal sealed class SharedOrigins
{
    private readonly List<Origin> shared;

    public SharedOrigins(IEnumerable<PointState> points) =>
        shared = [
            .. points
                .Where(p => p.Given is null)
                .Select(p => p.Figure?.Origin)
                .OfType<Origin>()
                .Where(o => o.Kind is OriginKind.Law or OriginKind.Standard)
                .GroupBy(o => o)
                .Where(g => g.Skip(1).Any())
                .Select(g => g.Key),
        ];

    /// <summary>Who demands a point's limit, or the number of the note that says it.</summary>
    public Sentence Of(PointState point) =>
        point is { Given: null, Figure.Origin: { } origin } && shared.IndexOf(origin) is >= 0 and var at
            ? origin.Kind is OriginKind.Law
                ? (Sentence)$"law, note {at + 1}"
                : (Sentence)$"standard, note {at + 1}"
            : PointWords.Origin(point);

    /// <summary>The notes.</summary>
    public void Write(Pages pages)
    {
        for (var i = 0; i < shared.Count; i++)
        {
            Sentence note = $"Note {i + 1}: {PointWords.Of(shared[i])}.";
            pages.Row([Cell.Of(0, Pages.Width, (note, Typeface.Aside))], 2, false);
        }
    }
}
