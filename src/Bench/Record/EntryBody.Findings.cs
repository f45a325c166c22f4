using System.Text.Json;
using Witnessmark.Bench.Findings;

namespace Witnessmark.Bench.Record;

public static partial class EntryBody
{
    internal const string Approved = "approved";
    internal const string Declined = "declined";

    /// <summary>Something to tell the owner; said again with the same name, it stands for what was said before.</summary>
    /// <param name="finding">Its name in the job.</param>
    /// <param name="point">Where it was found, or null.</param>
    /// <param name="what">In a few words.</param>
    /// <param name="urgency">How soon it has to be put right.</param>
    /// <param name="photographs">Hashes of photographs of this job that show it.</param>
    public static JsonElement Finding(
        string finding,
        string? point,
        string what,
        Urgency urgency,
        IReadOnlyList<string>? photographs = null
    ) =>
        Object(json =>
        {
            json.WriteString("finding", finding);
            Optional(json, "point", point);
            json.WriteString("what", what);
            json.WriteString("urgency", urgency.InWords());
            if (photographs is { Count: > 0 })
                Write(json, "photographs", photographs);
        });

    /// <summary>What putting a finding right is expected to cost, as it was typed.</summary>
    public static JsonElement Estimate(string finding, EstimateDraft draft) =>
        Object(json =>
        {
            json.WriteString("finding", finding);
            json.WriteString("currency", draft.Currency);
            json.WriteString("rate", draft.Rate);
            json.WriteString("tax", draft.Tax);
            json.WriteNumber("minutes", draft.Minutes);
            json.WriteStartArray("parts");
            foreach (var part in draft.Parts)
            {
                json.WriteStartObject();
                json.WriteString("item", part.Item);
                json.WriteString("quantity", part.Quantity);
                json.WriteString("price", part.Price);
                Optional(json, "tax", part.Tax);
                json.WriteEndObject();
            }
            json.WriteEndArray();
        });

    /// <summary>The owner's word on a finding.</summary>
    /// <param name="finding">Its name in the job.</param>
    /// <param name="told">What the owner was told.</param>
    /// <param name="approved">Have it done; else declined.</param>
    /// <param name="name">Whose word it is.</param>
    /// <param name="means">By what means it came.</param>
    /// <param name="acknowledged">Declined, knowing what it means.</param>
    /// <param name="signature">The signature on the screen, or null.</param>
    public static JsonElement Decision(
        string finding,
        Told told,
        bool approved,
        string name,
        Means means,
        bool acknowledged = false,
        SignaturePath? signature = null
    ) =>
        Object(json =>
        {
            json.WriteString("finding", finding);
            json.WriteString("what", told.What);
            json.WriteString("urgency", told.Urgency.InWords());
            Optional(json, "total", told.Total);
            json.WriteString("decision", approved ? Approved : Declined);
            json.WriteString("name", name);
            json.WriteString("means", MeansWords.ByWords.First(m => m.Value == means).Key);
            if (acknowledged)
                json.WriteBoolean("acknowledged", true);
            Optional(json, "signature", signature?.Text);
        });

    /// <summary>A finding that somebody put right.</summary>
    public static JsonElement PutRight(string finding, string how) => Of(("finding", finding), ("how", how));
}
