using System.Text.Json;
using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Photographs;

namespace Witnessmark.Bench.Record;

public static partial class EntryBody
{
    /// <summary>A figure for this job, as it was written down at a point.</summary>
    /// <param name="point">Where it was asked for.</param>
    /// <param name="draft">Its texts; the origin as in a sheet.</param>
    /// <param name="document">The maker's document that the origin names where the sheet does not have it, or null.</param>
    public static JsonElement Figure(string point, FigureDraft draft, NamedDocument? document = null) =>
        Object(json =>
        {
            json.WriteString("point", point);
            json.WriteString("key", draft.Key);
            json.WriteString("demand", draft.Demand);
            json.WriteString("printed", draft.Printed);
            json.WriteString("origin", draft.Origin);
            Optional(json, "tolerance", draft.Tolerance);
            Optional(json, "unit", draft.Unit);
            Optional(json, "also", draft.Also);
            Optional(json, "when", draft.When);
            Optional(json, "bolt", draft.Bolt);
            if (document is not null)
                Write(json, document);
        });

    /// <summary>Somebody answers by name for judging a point by a figure.</summary>
    /// <param name="point">The point.</param>
    /// <param name="name">Who.</param>
    /// <param name="figure">The figure that they saw, <see cref="Figures.Figure.InSheet"/>.</param>
    /// <param name="word">What the shop gave them for showing who they are; null where nobody has to.</param>
    public static JsonElement Vouch(string point, string name, string figure, string? word = null) =>
        Of(("point", point), ("name", name), ("figure", figure), (Word.Key, word));

    /// <summary>A photograph; its picture lies beside the ledger under its hash.</summary>
    /// <param name="point">What it shows, or null for the machine.</param>
    /// <param name="figure">Key of the figure whose place in a document it shows, or null.</param>
    /// <param name="picture">The picture.</param>
    /// <param name="shows">In a few words.</param>
    public static JsonElement Photograph(string? point, string? figure, Picture picture, string shows) =>
        Object(json =>
        {
            Optional(json, "point", point);
            Optional(json, "figure", figure);
            json.WriteString("sha256", picture.Sha256);
            json.WriteString("type", Picture.MediaType);
            json.WriteNumber("width", picture.Width);
            json.WriteNumber("height", picture.Height);
            json.WriteNumber("bytes", picture.Bytes);
            json.WriteString("shows", shows);
        });

    private static void Write(Utf8JsonWriter json, NamedDocument document)
    {
        json.WriteStartObject("document");
        json.WriteString("name", document.Name);
        json.WriteString("title", document.Title);
        json.WriteString("edition", document.Edition);
        json.WriteEndObject();
    }
}
