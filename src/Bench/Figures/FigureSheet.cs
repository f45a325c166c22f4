using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Figures;

/// <summary>All figures and the geometry of one model and its years, in one revision.</summary>
/// <param name="Id">File name without ending: <c>fell-640</c>.</param>
/// <param name="Name">The model.</param>
/// <param name="Years"><c>2023-2026</c>.</param>
/// <param name="Drive"><c>chain</c>, <c>belt</c> or <c>shaft</c>.</param>
/// <param name="Cylinders">How many.</param>
/// <param name="Revision">Counts up; a job keeps the one it was judged by.</param>
/// <param name="Documents">Title and edition by document name.</param>
/// <param name="Figures">By key.</param>
/// <param name="Geometry">Quantities of the machine's geometry by name: <c>thread-pitch</c>; optional, unlocks corrections.</param>
/// <param name="Facts">Truths and counts of the machine by name, such as <c>axle-reading-grows-rearward</c> = "true", <c>front-teeth</c> = "15".</param>
/// <param name="Schedule">What its maker wants done and how often.</param>
/// <param name="Changes">How it came to stand as it does, oldest first; empty for a sheet that nobody changed here.</param>
public sealed record FigureSheet(
    string Id,
    string Name,
    string Years,
    string Drive,
    int Cylinders,
    int Revision,
    IReadOnlyDictionary<string, SheetDocument> Documents,
    IReadOnlyDictionary<string, Figure> Figures,
    IReadOnlyDictionary<string, Written> Geometry,
    IReadOnlyDictionary<string, string> Facts,
    IReadOnlyList<ScheduledWork> Schedule,
    IReadOnlyList<SheetChange> Changes
)
{
    /// <summary>How the model is built, by the trait's name; null where the sheet does not say.</summary>
    public string? Trait(string name) =>
        name == "drive" ? Drive
        : Facts.TryGetValue(name, out var word) ? word
        : name == "kind" ? MachineFacts.UsualKind
        : null;
}

/// <summary>A document that figures are taken from.</summary>
public sealed record SheetDocument(string Title, string Edition);
