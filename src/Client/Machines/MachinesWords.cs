using System.Globalization;

namespace Witnessmark.Client.Machines;

/// <summary>Words of the machines.</summary>
internal static class MachinesWords
{
    public const string Title = "Machines";
    public const string Find = "Find a machine";
    public const string FindHint = "VIN, plate, model, owner";
    public const string OnDevice = "Those that this device knows. Type to look in the shop's register.";
    public const string TypeMore = "Three letters or digits are needed to look in the register.";
    public const string Looking = "Looking in the register.";
    public const string NoRegister = "The shop cannot be reached";
    public const string OnlyKnown = "Only the machines that this device knows are looked through.";
    public const string Camera = "Read a bar code with the camera";
    public const string CloseCamera = "Close the camera";
    public const string Take = "Take it";
    public const string NoCamera =
        "No camera here: the browser gives one only over https, or has none. Type the number or use a reader.";
    public const string LooksForAll = "Hold the code level and near. Bars, QR and data matrix are read.";
    public const string LooksForLines =
        "Hold the code level and near. This browser reads no codes itself: the program looks for Code 39 and Code 128, as VIN labels have them.";
    public const string NoSuchMachine = "Neither the register nor this device knows this machine";
    public const string Open = "Open a job for it";
    public const string Sheet = "Figure sheet";
    public const string NoSheet = "none on record; it is chosen when a job is opened";
    public const string NotAsked = "The register could not be asked. Shown is what this device knows.";
    public const string Distances = "Distances";
    public const string NoDistances = "No distance is on record here.";
    public const string AllDistances = "All readings of the odometer";
    public const string Visits = "Visits";
    public const string NoVisits = "This device knows of no visit.";
    public const string NoHandover = "A handover sheet comes with the release.";
    public const string Readings = "Readings at each point";
    public const string NoReadings = "Nothing has been read here yet.";
    public const string NotReleased = "not released";
    public const string Day = "Day";
    public const string Distance = "Distance";
    public const string Reading = "Reading";
    public const string Verdict = "Verdict";
    public const string Forecast = "How far it still goes";
    public const string FanIs = "Dashed: the straight line through the readings. Grey: nine lines in ten.";
    public const string FirstTheEyes =
        "A straight line knows no crack, no crash and no other rider. The maker's interval and your eyes come first.";
    public const string FleetNotAsked = "The shop could not be asked how other machines wear here.";
    public const string AllReadings = "Readings, the latest first";
    public const string NoSuchPoint = "Nothing was read there";
    public const string Owner = "Owner";
    public const string NoOwner = "Nobody is on record.";
    public const string ForgetOwner = "Forget the owner";
    public const string Forget = "Forget name and contact";
    public const string Keep = "Keep them";
    public const string ForgetWhat =
        "Name and contact go out of the register for good. VIN, plate, distances and jobs stay, and so does what was written by hand into a job. A list that still names the owner brings the name back when it is imported.";
    public const string Forgotten = "The owner is forgotten.";

    public static string Kilometres(double? kilometres) =>
        kilometres is { } known ? string.Create(CultureInfo.InvariantCulture, $"{known:0.#} km") : "not read";

    public static string Count(int count, bool more) =>
        count == 0 ? "No machine has that in it."
        : more ? $"More than these {count}: type more of it."
        : count == 1 ? "1 machine."
        : $"{count} machines.";

    public static string Seen(string text) => $"Seen: {text}.";

    public static string CameraRefused(string why) =>
        why == "NotAllowedError"
            ? "The camera was not allowed. Allow it in the browser, or type the number."
            : $"The camera gives no picture ({why}). Type the number, or use a reader.";

    public static string More(int count) => count == 1 ? "Show 1 older" : $"Show {count} older";

    public static string MorePhotographs(int count) =>
        count == 1 ? "Show 1 more photograph" : $"Show {count} more photographs";

    public static string PapersAtShop(bool released) =>
        $"{(released ? "Handover sheet and log book are" : "The log book is")} made at the shop, which cannot be reached.";

    public static string FewOthers(int count) =>
        count switch
        {
            0 => "No other machine of its figure sheet shows how fast it wears here; three are needed.",
            1 => "Only 1 other machine of its figure sheet shows how fast it wears here; three are needed.",
            _ => $"Only {count} other machines of its figure sheet show how fast it wears here; three are needed.",
        };

    public static string Visited(int visits) => visits == 1 ? "in 1 visit" : $"in {visits} visits";

    public static string NotDrawn(int count) =>
        count == 1
            ? "1 reading is not drawn: its distance is not known, or the odometer went back since."
            : $"{count} readings are not drawn: their distance is not known, or the odometer went back since.";
}
