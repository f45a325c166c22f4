using Witnessmark.Bench.AtThePoint;
using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Jobs;
using Witnessmark.Client.Figures;

namespace Witnessmark.Client.AtThePoint;

/// <summary>A figure for one job while it is being written down at a point. The document is asked for once and offered again.</summary>
public sealed class GivenDraft
{
    private const int LongestName = 40;
    private readonly PointState state;
    private readonly FigureSheet sheet;

    /// <param name="state">The point that has no figure.</param>
    /// <param name="job">Its job, whose earlier figures tell which document lies open.</param>
    /// <param name="origin">Who says it: the maker's manual, a law, a standard or the workshop.</param>
    public GivenDraft(PointState state, JobState job, OriginKind origin)
    {
        (this.state, sheet) = (state, job.Arrival!.Sheet);
        var earlier = job.Points.Select(p => p.Given).OfType<GivenFigure>().DistinctBy(g => g.Entry.Id).ToList();
        Documents =
        [
            .. sheet.Documents.Select(d => new NamedDocument(d.Key, d.Value.Title, d.Value.Edition)),
            .. earlier.Select(g => g.Document).OfType<NamedDocument>().Distinct(),
        ];
        Document = earlier.Select(DocumentOf).LastOrDefault(d => d is not null) ?? Documents.FirstOrDefault();
        Fields = new()
        {
            Key = state.Point.JudgedBy!,
            Unit = state.Point.Reading.Unit?.Symbol ?? "day",
            Origin = origin,
        };
        if (GivenWords.Demands(state.Point).Take(2).ToList() is [var only])
            Fields.Choose(only.Key);
    }

    public FigureFields Fields { get; }

    public OriginKind Origin => Fields.Origin!.Value;

    public bool FromManual => Origin == OriginKind.Maker;

    /// <summary>Documents that the sheet or an earlier figure of this job names.</summary>
    public IReadOnlyList<NamedDocument> Documents { get; }

    /// <summary>The one that lies open; null: another one, by title and edition.</summary>
    public NamedDocument? Document { get; set; }

    public string Title { get; set; } = "";

    public string Edition { get; set; } = "";

    /// <summary>The place whose law counts, as typed, or the number of the standard.</summary>
    public string Source { get; set; } = "";

    /// <summary>Where in that law or standard it stands.</summary>
    public string Clause { get; set; } = "";

    /// <summary>The figure with the document that its entry has to explain, or why it cannot judge this point.</summary>
    public (FigureDraft Draft, NamedDocument? Document, Sentence? Why) Read()
    {
        var document = !FromManual ? null : Document ?? new(Name(), Title.Trim(), Edition.Trim());
        Fields.Document = document?.Name ?? "";
        if (Origin is OriginKind.Law or OriginKind.Standard)
            Fields.Place = string.Join(", ", ((string[])[Said(), Clause.Trim()]).Where(p => p.Length > 0));
        var draft = Fields.Draft();
        var told = document is null || sheet.Documents.ContainsKey(document.Name) ? null : document;
        return (draft, told, GivenFigure.Read(draft, told, state.Point, sheet).Why);
    }

    private string Said() => Origin == OriginKind.Law ? JurisdictionCode.Read(Source).Code! : Source.Trim();

    private NamedDocument? DocumentOf(GivenFigure given) =>
        given.Document
        ?? (
            given.Figure.Origin.Kind == OriginKind.Maker
                ? Documents.FirstOrDefault(d => d.Name == given.Figure.Origin.Place.Split(' ')[0])
                : null
        );

    /// <summary>One word out of the title, that nothing else here is called by.</summary>
    private string Name()
    {
        var words = Title.ToLowerInvariant().Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var name = string.Join('-', words.Select(w => string.Concat(w.Where(char.IsAsciiLetterOrDigit))));
        name = name.Length == 0 ? "manual" : name[..Math.Min(name.Length, LongestName)];
        while (Documents.Any(d => d.Name == name))
            name += "-2";
        return name;
    }
}
