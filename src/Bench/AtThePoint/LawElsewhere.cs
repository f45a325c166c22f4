using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Machines;

namespace Witnessmark.Bench.AtThePoint;

/// <summary>Figures that rest on the law of another place than the shop's: no mistake, but somebody has to know.</summary>
public static class LawElsewhere
{
    /// <summary>About one figure, in one sentence; null when its origin is no law, or the law of the shop's place.</summary>
    public static Sentence? Said(Figure figure, Workshop shop) =>
        figure.Origin.Jurisdiction is not { } place ? null
        : shop.Jurisdiction is not { } here
            ? (Sentence)
                $"This is the law of {place}. The workshop file does not say whose law counts here: jurisdiction under [workshop]."
        : here.Has(place) ? null
        : (Sentence)
            $"This is the law of {place}; this workshop works under the law of {here}. Look up what that one demands.";

    /// <summary>All such figures in the newest revisions of a shop's sheets, in one sentence each.</summary>
    public static IReadOnlyList<Sentence> In(Workbench bench) =>
        [
            .. bench
                .Sheets.GroupBy(s => s.Id)
                .Select(revisions => revisions.MaxBy(s => s.Revision)!)
                .SelectMany(sheet => sheet.Figures.Values.Select(f => (Sheet: sheet, Figure: f)))
                .Select(f => (f.Sheet, f.Figure, Said: Said(f.Figure, bench.Workshop)))
                .Where(f => f.Said is not null)
                .Select(f => (Sentence)$"The figure sheet \"{f.Sheet.Id}\", figure \"{f.Figure.Key}\": {f.Said}"),
        ];
}
