using Witnessmark.Bench.Searching;

namespace Witnessmark.Client.Searching;

/// <summary>Words of the search over everything.</summary>
internal static class SearchWords
{
    public const string Button = "Search";
    public const string Keys = "Ctrl K";
    public const string Title = "Go to";
    public const string Hint = "a job, plate, machine, point, figure or calculation";
    public const string Found = "What was found";
    public const string Close = "Close";
    public const string Nothing = "Nothing here has all these words.";

    public static string Kind(SearchKind kind) =>
        kind switch
        {
            SearchKind.Point => "Point",
            SearchKind.Job => "Job",
            SearchKind.Area => "Area",
            SearchKind.Machine => "Machine",
            SearchKind.Figure => "Figure",
            SearchKind.Calculation => "Calculation",
            SearchKind.JobDone => "Job, done",
            SearchKind.PointBefore => "Point, before",
            _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "A kind without a word."),
        };

    public static string Count(SearchHits hits) =>
        hits.All == 0 ? Nothing
        : hits.More > 0 ? $"{hits.Shown.Count} of {hits.All}. Another word makes them fewer."
        : hits.All == 1 ? "1 found"
        : $"{hits.All} found";

    public static string OverVisits(string machine) => $"{machine}, over its visits";
}
