using Witnessmark.Bench.Figures;
using Witnessmark.Client.Parts;

namespace Witnessmark.Client.Figures;

/// <summary>Words of the figure sheets.</summary>
internal static class FiguresWords
{
    public static string Title => Say($"Figures");
    public static string Find => Say($"Find a sheet or a figure");
    public static string FindHint => Say($"slack, tyre, 110 N·m, a model");
    public static string Sheets => Say($"Figure sheets");
    public static string Found => Say($"Found");
    public static string Nothing => Say($"No sheet and no figure has that in it.");
    public static string NoSuchSheet => Say($"There is no such figure sheet");
    public static string NoSuchFigure => Say($"This sheet has no such figure");
    public static string Doubts => Say($"Look again");
    public static string DoubtsWhy =>
        Say($"Physics makes these figures look odd. The document is right until it is proved wrong.");
    public static string History => Say($"How it came to stand so");
    public static string NoHistory => Say($"Nobody has changed this sheet here.");
    public static string NoFigureHistory => Say($"Nobody has changed this figure here.");
    public static string Compare => Say($"Compare two revisions");
    public static string Change => Say($"Change this figure");
    public static string Add => Say($"Add a figure");
    public static string Key => Say($"Name of the figure");
    public static string KeyHint => Say($"chain.slack");
    public static string Demand => Say($"What does it demand?");
    public static string UnitOf => Say($"Unit");
    public static string From => Say($"From");
    public static string To => Say($"To");
    public static string Value => Say($"Value");
    public static string Tolerance => Say($"Tolerance ±");
    public static string Where => Say($"Where does it come from?");
    public static string Place => Say($"Page or section");
    public static string Law => Say($"Country and clause");
    public static string Standard => Say($"Number of the standard");
    public static string Conditions => Say($"Conditions, if any");
    public static string Also => Say($"Printed beside it in another unit, if so");
    public static string Why => Say($"Why does it change?");
    public static string Save => Say($"Keep as a new revision");
    public static string Cancel => Say($"Leave it as it is");
    public static string Before => Say($"Before");
    public static string After => Say($"After");
    public static string OnlyDifferent => Say($"Only what differs");
    public static string Same => Say($"Both revisions say the same.");
    public static string JudgesPoints => Say($"Judges");
    public static string NotThere => Say($"not in this revision");

    public static IReadOnlyDictionary<string, string> Demands =>
        new Dictionary<string, string>
        {
            ["range"] = Say($"From … to …"),
            ["min"] = Say($"At least"),
            ["max"] = Say($"At most"),
            ["target"] = Say($"A target"),
            ["torque"] = Say($"A torque"),
            ["amount"] = Say($"An amount"),
        };

    public static IReadOnlyDictionary<OriginKind, string> Origins =>
        new Dictionary<OriginKind, string>
        {
            [OriginKind.Maker] = Say($"Maker's document"),
            [OriginKind.Law] = Say($"Law"),
            [OriginKind.Standard] = Say($"Standard"),
            [OriginKind.Shop] = Say($"This workshop"),
            [OriginKind.CommonPractice] = Say($"Common practice"),
        };

    /// <summary>What is printed beside the figure in another unit.</summary>
    public static string Beside(string also) => Digits(also.Replace(" to ", " – ", StringComparison.Ordinal));

    /// <summary>The model's years as they are printed: a dash between them.</summary>
    public static string Years(FigureSheet sheet) => sheet.Years.Replace('-', '–');

    public static string Document(string title, string edition) => Say($"{title}, edition {edition}");

    public static string Revision(int revision) => Say($"revision {revision}");

    public static string Count(int figures) => Say(Sentence.Count(figures, $"1 figure", $"{figures} figures"));

    public static string Changed(SheetChange change) =>
        Say($"Revision {change.Revision}, {Sentence.Day(DayForm.Figures, change.On)}, {change.By}: {change.Why}");

    public static string Missing(FigureFields fields) =>
        fields.Key.Trim().Length == 0 ? Say($"Give the figure a name.")
        : fields.Demand.Length == 0 ? Say($"Say what it demands.")
        : fields.Unit.Length == 0 ? Say($"Choose the unit.")
        : fields.Numbers.Any(n => n.Needed && !TypedNumber.Stands(n.Text)) ? Say($"Type the number.")
        : fields.Origin is null ? Say($"Say where it comes from.")
        : fields.PlaceNeeded && fields.Place.Trim().Length == 0 ? Say($"Say where exactly it stands.")
        : fields.Why.Trim().Length == 0 ? Say($"Say why it changes.")
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
            ? Say($"{document.Title}, edition {document.Edition},{figure.Origin.Place[name.Length..]}")
            : figure.Origin.Place;
    }
}
