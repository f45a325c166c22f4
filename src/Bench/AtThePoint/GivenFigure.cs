using Witnessmark.Bench.Book;
using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Record;

namespace Witnessmark.Bench.AtThePoint;

/// <summary>A figure that a job was given at the bench, because its sheet has none for the key.</summary>
/// <param name="Entry">Who gave it, and when.</param>
/// <param name="Point">The point at which it was given.</param>
/// <param name="Figure">The figure.</param>
/// <param name="Document">The maker's document that it was taken from where the sheet does not name it, or null.</param>
public sealed record GivenFigure(Entry Entry, string Point, Figure Figure, NamedDocument? Document)
{
    /// <summary>Reads a figure as somebody wrote it down at a point.</summary>
    /// <param name="draft">The figure.</param>
    /// <param name="document">The document that its origin names, or null when the sheet has it or none is named.</param>
    /// <param name="point">Where it was asked for.</param>
    /// <param name="sheet">The sheet of the job.</param>
    /// <returns>The figure, or why it cannot judge this point on this job.</returns>
    public static (Figure? Figure, Sentence? Why) Read(
        FigureDraft draft,
        NamedDocument? document,
        Point point,
        FigureSheet sheet
    )
    {
        if (point.JudgedBy != draft.Key)
            return (null, $"point \"{point.Id}\" is not judged by a figure \"{draft.Key}\"");
        if (sheet.Figures.ContainsKey(draft.Key))
            return (null, $"the sheet has a figure \"{draft.Key}\": that one judges");
        if (document is not null && Refused(document, sheet) is { } refused)
            return (null, refused);
        IEnumerable<string> own = document is null ? [] : [document.Name];
        var (figure, why) = draft.Read([.. sheet.Documents.Keys, .. own]);
        if (figure is null)
            return (null, why);
        return FigureFits.WhyNot(point, figure) is var (found, right)
            ? (null, (Sentence)$"{found}; right would be {right}")
            : (Titled(figure, document), null);
    }

    private static Sentence? Refused(NamedDocument document, FigureSheet sheet) =>
        document.Name.Length == 0 || !document.Name.All(c => char.IsAsciiLetterOrDigit(c) || c == '-')
            ? (Sentence)
                $"\"{document.Name}\" cannot name a document; right would be one word of letters, digits and hyphens"
        : string.IsNullOrWhiteSpace(document.Title) || string.IsNullOrWhiteSpace(document.Edition)
            ? (Sentence)$"the document \"{document.Name}\" needs its title and its edition"
        : sheet.Documents.TryGetValue(document.Name, out var other)
        && other != new SheetDocument(document.Title, document.Edition)
            ? (Sentence)
                $"the sheet calls \"{other.Title}, {other.Edition}\" by the name \"{document.Name}\"; right would be another name"
        : null;

    // no sheet explains the name, so the origin says the title itself
    private static Figure Titled(Figure figure, NamedDocument? document) =>
        document is not null
        && figure.Origin is { Kind: OriginKind.Maker } origin
        && origin.Place.StartsWith(document.Name + " ", StringComparison.Ordinal)
            ? figure with
            {
                Origin = origin with
                {
                    Place = $"{document.Title}, {document.Edition}, {origin.Place[(document.Name.Length + 1)..]}",
                },
            }
            : figure;
}
