namespace Witnessmark.Client.OwnShop;

/// <summary>Words of the screens on which somebody sets up their own shop.</summary>
internal static class OwnShopWords
{
    public static string Title => Say($"Set up your own shop");
    public static IReadOnlyList<string> Screens =>
        [Say($"The shop"), Say($"Tools"), Say($"First machine"), Say($"Look it over")];
    public static string NoDemo =>
        Say($"This shop is set up already. Its people, tools and machines stand in shop.toml.");
    public static string OnlyLeads => Say($"The door is closed: a lead sets up the shop.");
    public static string Next => Say($"Next");
    public static string Back => Say($"Back");
    public static string Choose => Say($"Choose");
    public static string Name => Say($"Name of the shop");
    public static string People => Say($"Who works there, one name on each line");
    public static string Lead => Say($"Who leads?");
    public static string Place => Say($"Country, two letters");
    public static string PlaceWhy =>
        Say(
            $"By the country the tool knows whose law counts: GB, DE, US-MD. Left empty, it tells no law from another."
        );
    public static string Paper => Say($"Paper");
    public static string Language => Say($"Language of papers");
    public static string Units => Say($"Units");
    public static IReadOnlyList<(string, string)> UnitSets => [("mm", "mm, kPa, N·m"), ("in", "in, psi, lbf·ft")];
    public static string ToolsWhy =>
        Say(
            $"Tap what you have. The numbers are usual ones: put in those of your own, and the day of the last calibration."
        );
    public static string ToolName => Say($"As you call it");
    public static string Resolution => Say($"Smallest step");
    public static string Error => Say($"Permissible error");
    public static string From => Say($"Range from");
    public static string To => Say($"Range to");
    public static string Checked => Say($"Last calibration");
    public static string MachineNow => Say($"Put a machine in now");
    public static string MachineLater => Say($"Later");
    public static string MachineWhy =>
        Say(
            $"How it is built decides which points it has. Its figure sheet begins empty: figures are given at the points, from the manual."
        );
    public static string Model => Say($"Model");
    public static string Make => Say($"Make, if recalls are to be found");
    public static string Vin => Say($"VIN");
    public static string Plate => Say($"Plate");
    public static string Year => Say($"Model year");
    public static string Cylinders => Say($"Cylinders");
    public static string Drive => Say($"Drive");
    public static string Comes => Say($"What comes");
    public static string NoMachine => Say($"No machine yet");
    public static string BookStays => Say($"The bench book stays.");
    public static string Goes => Say($"What goes");
    public static string GoesWhere =>
        Say($"Nothing is deleted: it lies in a folder “demo-put-away” with day and time, in the data folder.");
    public static string GoesDevice =>
        Say(
            $"This device forgets the demo. Other devices keep what they have of it, and none of it comes into your shop."
        );
    public static string Word => Say($"begin");
    public static string TypeWord => Say($"To do it, type “{Word}”");
    public static string Do => Say($"Put the demo away and begin");
    public static string Busy => Say($"The demo is put away and your shop is opened. This takes a few seconds.");
    public static string Wrong => Say($"This cannot be taken");
    public static string GoBack => Say($"Go back and change it.");
    public static string SendFirst => Say($"Entries of this device are not at the shop yet. Send them first.");
    public static string NeedsWord => Say($"The word is missing.");
    public static string NeedsName => Say($"The name is missing.");
    public static string NeedsPeople => Say($"One name at least is missing.");
    public static string NeedsLead => Say($"Say who leads.");
    public static string NeedsModel => Say($"The model is missing.");
    public static string NeedsNumber => Say($"VIN or plate is missing.");
    public static string NeedsCylinders => Say($"The number of cylinders is missing.");

    public static string NeedsFact(string label) => Say($"Not chosen yet: {Inside(label)}.");

    public static string PeopleOf(int count, string lead) =>
        Say(Sentence.Count(count, $"1 person, {lead} leads", $"{count} people, {lead} leads"));

    public static string ToolsOf(int count) => Say(Sentence.Count(count, $"1 tool", $"{count} tools"));

    public static string MachineOf(string model) => Say($"{model} with an empty figure sheet");

    public static string GoesWhat(int jobs, int machines) =>
        Say($"{Jobs(jobs)} and {Machines(machines)} of the demo, its people, figures, shelf, recalls and photographs.");

    private static Sentence Jobs(int count) => Sentence.Count(count, $"1 job", $"{count} jobs");

    private static Sentence Machines(int count) => Sentence.Count(count, $"1 machine", $"{count} machines");
}
