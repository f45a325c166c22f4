using Witnessmark.Bench.AtThePoint;
using Witnessmark.Bench.Book;
using Witnessmark.Bench.Figures;
using Witnessmark.Client.Figures;
using Witnessmark.Client.Parts;

namespace Witnessmark.Client.AtThePoint;

/// <summary>Words about what is given at a point: a figure, a name, a photograph.</summary>
internal static class GivenWords
{
    public const string NoFigure = "The sheet has no figure for this.";
    public const string Differ = "Two devices gave different figures at the same time. Give it once more.";
    public const string Give = "Give a figure";
    public const string GiveAgain = "Give another figure";
    public const string Whose = "Where do you take it from?";
    public const string Manual = "The maker's manual";
    public const string ManualSoft = "document, edition and page; it binds";
    public const string Law = "A law";
    public const string LawSoft = "country or part of it, and clause; it binds there";
    public const string LawInForce =
        "From the table of the handbook, for motorcycles over 50 cc. The law in force comes first: look the clause up where you are not sure.";
    public const string Standard = "A standard";
    public const string StandardSoft = "number with its year, and clause; it binds";
    public const string WhereLaw = "Where it is law, by its code";
    public const string WhereLawHint = "GB, US-MD";
    public const string NumberOf = "Number and year of the standard";
    public const string NumberHint = "ISO 3779:2009";
    public const string Clause = "Clause";
    public const string ShopsOwn = "This workshop's own figure";
    public const string ShopsSoft = "not the maker's, and shown so everywhere";
    public const string Habit = "Common practice";
    public const string HabitSoft = "no source stands behind it; have a look";
    public const string NoSource =
        "Common practice, no source. Look into the maker's manual first; take this only where there is none.";
    public const string TakeHabit = "Take it for this job";
    public const string Document = "Which document?";
    public const string OtherDocument = "Another one";
    public const string TitleOf = "Title on its cover";
    public const string Edition = "Edition or year";
    public const string Keep = "Keep for this job";
    public const string VouchTitle = "Vouch for this figure";
    public const string Vouch = "Vouch";
    public const string VouchWhy =
        "Somebody's safety hangs on this point, and neither the maker nor a law nor a standard stands behind the figure. With a name somebody of the workshop answers that it is right for this machine.";
    public const string Photograph = "Photograph";
    public const string Photographs = "Photographs";
    public const string Take = "Take or choose a picture";
    public const string Again = "Another picture";
    public const string Shows = "What does it show?";
    public const string OfWhat = "Of what?";
    public const string OfPoint = "This point";
    public const string OfFigure = "The page with its figure";
    public const string KeepPicture = "Keep this picture";
    public const string Working = "One moment.";
    public const string Unreadable = "This browser cannot read that file as a picture. Choose a JPEG or PNG.";
    public const string Full =
        "This device has no room for the picture. It was not kept and nothing was written. Make room on the device or send what waits here to the shop, then take it again.";
    public const string NotHere = "Not on this device, and the shop did not give it.";
    public const string OfMachine = "Photograph the machine";

    public static string LawHere(LegalMinimum law) => $"The law of {law.Place}";

    public static string LookedFor(string words) => $"Looked for: {words}.";

    public static string By(GivenFigure given) => $"given at the bench by {given.Entry.By}";

    public static string ForThisJob(string figure) => $"Figure for this job: {figure}";

    public static string VouchedBy(Vouched vouched) => $"{vouched.Name} vouches for this figure.";

    public static string WhoVouches(IEnumerable<string> people) =>
        $"Write a name as the workshop has it: {string.Join(", ", people)}.";

    /// <summary>The demands by which a point can be judged.</summary>
    public static IEnumerable<KeyValuePair<string, string>> Demands(Point point) =>
        FiguresWords.Demands.Where(d =>
            d.Key != "amount" && d.Key == "torque" == (point.Reading.Kind == ReadingKind.Tighten)
        );

    public static string Missing(GivenDraft draft) =>
        draft.Fields.Demand.Length == 0 ? "Say what it demands."
        : draft.Fields.Unit.Length == 0 ? "Choose the unit."
        : draft.Fields.Numbers.Any(n => n.Needed && !TypedNumber.Stands(n.Text)) ? "Type the number."
        : draft.Origin switch
        {
            OriginKind.Maker => MissingOfManual(draft),
            OriginKind.Law => draft.Source.Trim().Length == 0 ? "Say where it is law."
            : JurisdictionCode.Read(draft.Source).Why is { } why ? why
            : draft.Clause.Trim().Length == 0 ? "Say in which clause it stands."
            : "",
            OriginKind.Standard => draft.Source.Trim().Length == 0 ? "Say which standard it is."
            : draft.Clause.Trim().Length == 0 ? "Say in which clause it stands."
            : "",
            _ => "",
        };

    /// <summary>From whom a figure comes, as it stands above its boxes.</summary>
    public static string Of(OriginKind origin) =>
        origin switch
        {
            OriginKind.Maker => Manual,
            OriginKind.Law => Law,
            OriginKind.Standard => Standard,
            _ => $"{ShopsOwn}, {ShopsSoft}",
        };

    private static string MissingOfManual(GivenDraft draft) =>
        draft is { Document: null, Title: var title } && title.Trim().Length == 0 ? "Say which document it is."
        : draft is { Document: null, Edition: var edition } && edition.Trim().Length == 0 ? "Say which edition it is."
        : draft.Fields.Place.Trim().Length == 0 ? "Say on which page it stands."
        : "";
}
