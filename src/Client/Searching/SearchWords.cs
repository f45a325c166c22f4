using Witnessmark.Bench.Searching;

namespace Witnessmark.Client.Searching;

/// <summary>Words of the search over everything.</summary>
internal static class SearchWords
{
    public static string Button => Say($"Search");
    public static string Keys => Say($"Ctrl K");
    public static string Title => Say($"Go to");
    public static string Hint => Say($"a job, plate, machine, point, figure or calculation");
    public static string Found => Say($"What was found");
    public static string Close => Say($"Close");
    public static string Nothing => Say($"Nothing here has all these words.");

    public static string Kind(SearchKind kind) =>
        kind switch
        {
            SearchKind.Point => Say($"Point"),
            SearchKind.Job => Say($"Job"),
            SearchKind.Area => Say($"Area"),
            SearchKind.Machine => Say($"Machine"),
            SearchKind.Figure => Say($"Figure"),
            SearchKind.Calculation => Say($"Calculation"),
            SearchKind.JobDone => Say($"Job, done"),
            SearchKind.PointBefore => Say($"Point, before"),
            _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "A kind without a word."),
        };

    public static string Count(SearchHits hits) =>
        hits.All == 0 ? Nothing
        : hits.More > 0 ? Say($"{hits.Shown.Count} of {hits.All}. Another word makes them fewer.")
        : Say(Sentence.Count(hits.All, $"1 found", $"{hits.All} found"));

    public static string OverVisits(string machine) => Say($"{machine}, over its visits");
}
