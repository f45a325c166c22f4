using Witnessmark.Bench.Searching;
using Witnessmark.Client.Device;
using Witnessmark.Client.Parts;
using Witnessmark.Client.Settings;
using Witnessmark.Client.Today;

namespace Witnessmark.Client.Searching;

/// <summary>The areas of the program, as the search finds them.</summary>
internal static class SearchAreas
{
    public static IReadOnlyList<SearchEntry> All =>
        [
            Area(PartsWords.Today, ""),
            Area(DayWords.Title, "day"),
            Area(TodayWords.Arrival, "arrival"),
            Area(PartsWords.Machines, "machines"),
            Area(PartsWords.Figures, "figures"),
            Area(PartsWords.Shelf, "shelf"),
            Area(PartsWords.Handbook, "handbook"),
            Area(TimerWords.Title, "timers"),
            Area(SettingsWords.Title, "settings"),
            Area(PartsWords.Device, "device"),
        ];

    private static SearchEntry Area(string title, string path) => new(SearchKind.Area, title, "", path);
}
