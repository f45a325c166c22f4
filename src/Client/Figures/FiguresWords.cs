using Witnessmark.Bench.Figures;
using Witnessmark.Client.Parts;

namespace Witnessmark.Client.Figures;

/// <summary>Words of the figure sheets.</summary>
internal static class FiguresWords
{
    public const string Title = "Figures";
    public const string Find = "Find a sheet or a figure";
    public const string FindHint = "slack, tyre, 110 N·m, a model";
    public const string Sheets = "Figure sheets";
    public const string Found = "Found";
    public const string Nothing = "No sheet and no figure has that in it.";
    public const string NoSuchSheet = "There is no such figure sheet";
    public const string NoSuchFigure = "This sheet has no such figure";
    public const string Doubts = "Look again";
    public const string DoubtsWhy =
        "Physics makes these figures look odd. The document is right until it is proved wrong.";
    public const string History = "How it came to stand so";
    public const string NoHistory = "Nobody has changed this sheet here.";
    public const string NoFigureHistory = "Nobody has changed this figure here.";
    public const string Compare = "Compare two revisions";
    public const string Change = "Change this figure";
    public const string Add = "Add a figure";
    public const string Key = "Name of the figure";
    public const string KeyHint = "chain.slack";
    public const string Demand = "What does it demand?";
    public const string UnitOf = "Unit";
    public const string From = "From";
    public const string To = "To";
    public const string Value = "Value";
    public const string Tolerance = "Tolerance ±";
    public const string Where = "Where does it come from?";
    public const string Place = "Page or section";
    public const string Law = "Country and clause";
    public const string Standard = "Number of the standard";
    public const string Conditions = "Conditions, if any";
    public const string Also = "Printed beside it in another unit, if so";
    public const string Why = "Why does it change?";
    public const string Save = "Keep as a new revision";
    public const string Cancel = "Leave it as it is";
    public const string Before = "Before";
    public const string After = "After";
    public const string OnlyDifferent = "Only what differs";
    public const string Same = "Both revisions say the same.";
    public const string JudgesPoints = "Judges";
    public const string NotThere = "not in this revision";

    public static readonly IReadOnlyDictionary<string, string> Demands = new Dictionary<string, string>
    {
        ["range"] = "From … to …",
        ["min"] = "At least",
        ["max"] = "At most",
        ["target"] = "A target",
        ["torque"] = "A torque",
        ["amount"] = "An amount",
    };

    public static readonly IReadOnlyDictionary<OriginKind, string> Origins = new Dictionary<OriginKind, string>
    {
        [OriginKind.Maker] = "Maker's document",
        [OriginKind.Law] = "Law",
        [OriginKind.Standard] = "Standard",
        [OriginKind.Shop] = "This workshop",
        [OriginKind.CommonPractice] = "Common practice",
    };

    public static string Revision(int revision) => $"revision {revision}";

    public static string Count(int figures) => figures == 1 ? "1 figure" : $"{figures} figures";

    public static string Changed(SheetChange change) =>
        $"Revision {change.Revision}, {change.On:yyyy-MM-dd}, {change.By}: {change.Why}";

    public static string Missing(FigureFields fields) =>
        fields.Key.Trim().Length == 0 ? "Give the figure a name."
        : fields.Demand.Length == 0 ? "Say what it demands."
        : fields.Unit.Length == 0 ? "Choose the unit."
        : fields.Numbers.Any(n => n.Needed && !TypedNumber.Stands(n.Text)) ? "Type the number."
        : fields.Origin is null ? "Say where it comes from."
        : fields.PlaceNeeded && fields.Place.Trim().Length == 0 ? "Say where exactly it stands."
        : fields.Why.Trim().Length == 0 ? "Say why it changes."
        : "";

    /// <summary>How an origin reads to a person: the document's title for its name.</summary>
    public static string Source(Figure figure, FigureSheet sheet)
    {
        if (figure.Origin.Kind != OriginKind.Maker)
            return figure.Origin.Kind switch
            {
                OriginKind.Shop or OriginKind.CommonPractice => Origins[figure.Origin.Kind],
                _ => figure.Origin.Place,
            };
        var name = figure.Origin.Place.Split(' ')[0];
        return sheet.Documents.GetValueOrDefault(name) is { } document
            ? $"{document.Title}, edition {document.Edition},{figure.Origin.Place[name.Length..]}"
            : figure.Origin.Place;
    }
}
