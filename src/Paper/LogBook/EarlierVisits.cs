using System.Text.Json;

namespace Witnessmark.Paper.LogBook;

/// <summary>The visits of a log book that is continued, with the keys that their signatures need.</summary>
/// <param name="Visits">Oldest first, as they stand in the file: fields that this program does not know are kept.</param>
/// <param name="Keys">Public keys that the file carries.</param>
/// <param name="Others">Members of the file itself that this program does not know.</param>
public sealed record EarlierVisits(
    IReadOnlyList<JsonElement> Visits,
    IReadOnlyList<PublicKey> Keys,
    IReadOnlyDictionary<string, JsonElement> Others
)
{
    /// <summary>Nothing is on record.</summary>
    public static EarlierVisits None { get; } = new([], [], new Dictionary<string, JsonElement>());

    /// <summary>The visits of a file. Check it first: this only reads.</summary>
    public static EarlierVisits In(string logBook)
    {
        using var document = JsonDocument.Parse(logBook);
        var file = document.RootElement.Clone();
        return file.TryGetProperty("visits", out var visits)
            ? new([.. visits.EnumerateArray()], [.. LogBookCheck.KeysIn(file)], LogBookContent.OthersIn(file))
            : None with
            {
                Visits = [file],
            }; // a file of version 1 is one visit
    }

    /// <summary>These, and then others that are not among them.</summary>
    public EarlierVisits And(EarlierVisits later)
    {
        var heads = Visits.Select(LogBookFile.HeadIn).ToHashSet();
        return new(
            [.. Visits, .. later.Visits.Where(v => !heads.Contains(LogBookFile.HeadIn(v)))],
            [.. Keys.Union(later.Keys)],
            later.Others.Concat(Others).DistinctBy(o => o.Key).ToDictionary()
        );
    }
}
