using Witnessmark.Bench.AtThePoint;
using Witnessmark.Bench.Book;
using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Photographs;
using Witnessmark.Bench.Record;
using Witnessmark.Bench.Toml;

namespace Witnessmark.Bench.JobFiles;

/// <summary>What the steps of a job file give beside the sheet, so far: figures with their documents, names that vouch, photographs.</summary>
internal sealed class GivenSteps(Workbench bench, FigureSheet sheet, Drafts drafts, Func<string, byte[]?> pictures)
{
    private readonly Dictionary<string, Figure> figures = new(StringComparer.Ordinal);
    private readonly Dictionary<string, NamedDocument> documents = new(StringComparer.Ordinal);

    /// <summary>The keys that are read here.</summary>
    public static ReadOnlySpan<string> Keys =>
        new[] { "figure", "document", "vouch", "photograph", "shows", "of-figure" };

    /// <summary>The figure that judges a point at this step, or null.</summary>
    public Figure? Judging(Point point) =>
        point.JudgedBy is { } key ? sheet.Figures.GetValueOrDefault(key) ?? figures.GetValueOrDefault(key) : null;

    /// <summary><c>figure = { … }</c> as in a sheet, or <c>figure = "common practice"</c>.</summary>
    public void TakeFigure(TomlTable step, Point point)
    {
        TakeDocument(step);
        step.LetStand("figure");
        if (!step.Has("figure"))
            return;
        var key = point.JudgedBy ?? "";
        var table = step.Entries["figure"].Value as TomlTable;
        var read = table is not null ? FigureTable.Read(key, table, Documents) : Proposed(step, key);
        if (read is null)
            return; // noted already
        var draft = FigureDraft.Of(read);
        var document =
            read.Origin.Kind == OriginKind.Maker ? documents.GetValueOrDefault(read.Origin.Place.Split(' ')[0]) : null;
        var (figure, why) = GivenFigure.Read(draft, document, point, sheet);
        if (figure is null)
            step.Wrong("figure", why!, "a figure for a point that the sheet gives none");
        else
            figures[key] = figure;
        drafts.Add(EntryKind.Figure, EntryBody.Figure(point.Id, draft, document));
    }

    /// <summary><c>vouch = "name"</c>.</summary>
    public void TakeVouch(TomlTable step, Point point)
    {
        if (step.TextOrNothing("vouch") is not { } name)
            return;
        var people = bench.Workshop.People;
        if (!people.Contains(name))
            step.Wrong("vouch", $"nobody in the shop is called \"{name}\"", Nearest.InWords(name, [.. people]));
        if (Judging(point) is not { Origin.Binding: false } figure)
            step.Wrong(
                "vouch",
                $"point \"{point.Id}\" is not judged by the workshop's figure or by common practice",
                "vouch only for such a figure"
            );
        else
            drafts.Add(EntryKind.Vouch, EntryBody.Vouch(point.Id, name, figure.InSheet));
    }

    /// <summary><c>photograph = "file.jpg"</c> with <c>shows = "…"</c>; <c>of-figure = true</c> for the place where the point's figure stands.</summary>
    public void TakePhotograph(TomlTable step, Point? point)
    {
        if (step.TextOrNothing("photograph") is not { } path)
            return;
        var shows = step.Text("shows");
        var figure = point is not null && step.TruthOrNothing("of-figure") == true ? point.JudgedBy : null;
        if (pictures(path) is not { } file)
            step.Wrong("photograph", $"there is no file \"{path}\"", "the path of a JPEG picture from this file");
        else if (StoredPicture.Of(file) is { Refusal: { } refusal })
            step.Wrong("photograph", refusal.Because, "an ordinary JPEG picture, shrunk");
        else
            drafts.Add(
                EntryKind.Photograph,
                EntryBody.Photograph(point?.Id, figure, StoredPicture.Of(file).Certain.Picture, shows)
            );
    }

    private IReadOnlyCollection<string> Documents => [.. sheet.Documents.Keys, .. documents.Keys];

    /// <summary><c>document = { name, title, edition }</c>: named once, it stands for all figures after it.</summary>
    private void TakeDocument(TomlTable step)
    {
        if (step.TableOrNothing("document") is not { } table)
            return;
        var document = new NamedDocument(table.Text("name"), table.Text("title"), table.Text("edition"));
        table.NoOtherKeys();
        documents[document.Name] = document;
    }

    private Figure? Proposed(TomlTable step, string key)
    {
        const string right = "a table as in a figure sheet, or \"common practice\"";
        var text = step.Text("figure");
        if (text == "common practice" && bench.Book.CommonPractice.TryGetValue(key, out var habit))
            return habit.Figure;
        step.Wrong(
            "figure",
            text == "common practice" ? $"the book knows no common practice for \"{key}\"" : $"the text \"{text}\"",
            right
        );
        return null;
    }
}
