using Witnessmark.Bench.AtThePoint;
using Witnessmark.Bench.Book;
using Witnessmark.Bench.Figures;
using Witnessmark.Client.Figures;
using Witnessmark.Client.Parts;

namespace Witnessmark.Client.AtThePoint;

/// <summary>Words about what is given at a point: a figure, a name, a photograph.</summary>
internal static class GivenWords
{
    public static string NoFigure => Say($"The sheet has no figure for this.");
    public static string Differ => Say($"Two devices gave different figures at the same time. Give it once more.");
    public static string Give => Say($"Give a figure");
    public static string GiveAgain => Say($"Give another figure");
    public static string Whose => Say($"Where do you take it from?");
    public static string Manual => Say($"The maker's manual");
    public static string ManualSoft => Say($"document, edition and page; it binds");
    public static string Law => Say($"A law");
    public static string LawSoft => Say($"country or part of it, and clause; it binds there");
    public static string LawInForce =>
        Say(
            $"From the table of the handbook, for motorcycles over 50 cc. The law in force comes first: look the clause up where you are not sure."
        );
    public static string Standard => Say($"A standard");
    public static string StandardSoft => Say($"number with its year, and clause; it binds");
    public static string WhereLaw => Say($"Where it is law, by its code");
    public static string WhereLawHint => Say($"GB, US-MD");
    public static string NumberOf => Say($"Number and year of the standard");
    public static string NumberHint => Say($"ISO 3779:2009");
    public static string Clause => Say($"Clause");
    public static string ShopsOwn => Say($"This workshop's own figure");
    public static string ShopsSoft => Say($"not the maker's, and shown so everywhere");
    public static string Habit => Say($"Common practice");
    public static string HabitSoft => Say($"no source stands behind it; have a look");
    public static string NoSource =>
        Say($"Common practice, no source. Look into the maker's manual first; take this only where there is none.");
    public static string TakeHabit => Say($"Take it for this job");
    public static string Document => Say($"Which document?");
    public static string OtherDocument => Say($"Another one");
    public static string TitleOf => Say($"Title on its cover");
    public static string Edition => Say($"Edition or year");
    public static string Keep => Say($"Keep for this job");
    public static string VouchTitle => Say($"Vouch for this figure");
    public static string Vouch => Say($"Vouch");
    public static string Voucher => Say($"Who vouches for it?");
    public static string VouchWhy =>
        Say(
            $"Somebody's safety hangs on this point, and neither the maker nor a law nor a standard stands behind the figure. With a name somebody of the workshop answers that it is right for this machine."
        );
    public static string Photograph => Say($"Photograph");
    public static string Photographs => Say($"Photographs");
    public static string Take => Say($"Take or choose a picture");
    public static string Again => Say($"Another picture");
    public static string Shows => Say($"What does it show?");
    public static string OfWhat => Say($"Of what?");
    public static string OfPoint => Say($"This point");
    public static string OfFigure => Say($"The page with its figure");
    public static string KeepPicture => Say($"Keep this picture");
    public static string Working => Say($"One moment.");
    public static string Unreadable => Say($"This browser cannot read that file as a picture. Choose a JPEG or PNG.");
    public static string Full =>
        Say(
            $"This device has no room for the picture. It was not kept and nothing was written. Make room on the device or send what waits here to the shop, then take it again."
        );
    public static string NotHere => Say($"Not on this device, and the shop did not give it.");
    public static string OfMachine => Say($"Photograph the machine");

    public static string LawHere(LegalMinimum law) => Say($"The law of {law.Place}");

    public static string LookedFor(string words) => Say($"Looked for: {words}.");

    public static string By(GivenFigure given) => Say($"given at the bench by {given.Entry.By}");

    public static string ForThisJob(string figure) => Say($"Figure for this job: {figure}");

    public static string VouchedBy(Vouched vouched) => Say($"{vouched.Name} vouches for this figure.");

    public static string WhoVouches(IEnumerable<string> people) =>
        Say($"Write a name as the workshop has it: {string.Join(", ", people)}.");

    /// <summary>The demands by which a point can be judged.</summary>
    public static IEnumerable<KeyValuePair<string, string>> Demands(Point point) =>
        FiguresWords.Demands.Where(d =>
            d.Key != "amount" && d.Key == "torque" == (point.Reading.Kind == ReadingKind.Tighten)
        );

    public static string Missing(GivenDraft draft) =>
        draft.Fields.Demand.Length == 0 ? Say($"Say what it demands.")
        : draft.Fields.Unit.Length == 0 ? Say($"Choose the unit.")
        : draft.Fields.Numbers.Any(n => n.Needed && !TypedNumber.Stands(n.Text)) ? Say($"Type the number.")
        : draft.Origin switch
        {
            OriginKind.Maker => MissingOfManual(draft),
            OriginKind.Law => draft.Source.Trim().Length == 0 ? Say($"Say where it is law.")
            : JurisdictionCode.Read(draft.Source).Why is { } why ? Known(why)
            : draft.Clause.Trim().Length == 0 ? Say($"Say in which clause it stands.")
            : "",
            OriginKind.Standard => draft.Source.Trim().Length == 0 ? Say($"Say which standard it is.")
            : draft.Clause.Trim().Length == 0 ? Say($"Say in which clause it stands.")
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
        draft is { Document: null, Title: var title } && title.Trim().Length == 0 ? Say($"Say which document it is.")
        : draft is { Document: null, Edition: var edition } && edition.Trim().Length == 0
            ? Say($"Say which edition it is.")
        : draft.Fields.Place.Trim().Length == 0 ? Say($"Say on which page it stands.")
        : "";
}
