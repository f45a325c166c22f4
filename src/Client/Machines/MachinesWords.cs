using System.Globalization;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Client.Machines;

/// <summary>Words of the machines.</summary>
internal static class MachinesWords
{
    public static string Title => Say($"Machines");
    public static string Find => Say($"Find a machine");
    public static string FindHint => Say($"VIN, plate, model, owner");
    public static string OnDevice => Say($"Those that this device knows. Type to look in the shop's register.");
    public static string TypeMore => Say($"Three letters or digits are needed to look in the register.");
    public static string Looking => Say($"Looking in the register.");
    public static string NoRegister => Say($"The shop cannot be reached");
    public static string OnlyKnown => Say($"Only the machines that this device knows are looked through.");
    public static string Camera => Say($"Read a bar code with the camera");
    public static string CloseCamera => Say($"Close the camera");
    public static string Take => Say($"Take it");
    public static string NoCamera =>
        Say($"No camera here: the browser gives one only over https, or has none. Type the number or use a reader.");
    public static string LooksForAll => Say($"Hold the code level and near. Bars, QR and data matrix are read.");
    public static string LooksForLines =>
        Say(
            $"Hold the code level and near. This browser reads no codes itself: the program looks for Code 39 and Code 128, as VIN labels have them."
        );
    public static string NoSuchMachine => Say($"Neither the register nor this device knows this machine");
    public static string Open => Say($"Open a job for it");
    public static string Sheet => Say($"Figure sheet");
    public static string NoSheet => Say($"none on record; it is chosen when a job is opened");
    public static string NotAsked => Say($"The register could not be asked. Shown is what this device knows.");
    public static string Distances => Say($"Distances");
    public static string NoDistances => Say($"No distance is on record here.");
    public static string AllDistances => Say($"All readings of the odometer");
    public static string Visits => Say($"Visits");
    public static string NoVisits => Say($"This device knows of no visit.");
    public static string NoHandover => Say($"A handover sheet comes with the release.");
    public static string Readings => Say($"Readings at each point");
    public static string NoReadings => Say($"Nothing has been read here yet.");
    public static string NotReleased => Say($"not released");
    public static string Day => Say($"Day");
    public static string Distance => Say($"Distance");
    public static string Reading => Say($"Reading");
    public static string Verdict => Say($"Verdict");
    public static string Forecast => Say($"How far it still goes");
    public static string FanIs => Say($"Dashed: the straight line through the readings. Grey: nine lines in ten.");
    public static string FirstTheEyes =>
        Say(
            $"A straight line knows no crack, no crash and no other rider. The maker's interval and your eyes come first."
        );
    public static string FleetNotAsked => Say($"The shop could not be asked how other machines wear here.");
    public static string AllReadings => Say($"Readings, the latest first");
    public static string NoSuchPoint => Say($"Nothing was read there");
    public static string Owner => Say($"Owner");
    public static string NoOwner => Say($"Nobody is on record.");
    public static string ForgetOwner => Say($"Forget the owner");
    public static string Forget => Say($"Forget name and contact");
    public static string Keep => Say($"Keep them");
    public static string ForgetWhat =>
        Say(
            $"Name and contact go out of the register for good. VIN, plate, distances and jobs stay, and so does what was written by hand into a job. A list that still names the owner brings the name back when it is imported."
        );
    public static string Forgotten => Say($"The owner is forgotten.");

    public static string NoDistance => Say($"distance not read");

    public static string Kilometres(double? kilometres) =>
        kilometres is { } known
            ? Say(InUnits.Of(known.ToString("0.#", CultureInfo.InvariantCulture), UnitTable.Named("km")))
            : Say($"not read");

    public static string Count(int count, bool more) =>
        count == 0 ? Say($"No machine has that in it.")
        : more ? Say($"More than these {count}: type more of it.")
        : Say(Sentence.Count(count, $"1 machine.", $"{count} machines."));

    public static string Frame(string number) => Say($"frame {number}");

    public static string Seen(string text) => Say($"Seen: {text}.");

    public static string CameraRefused(string why) =>
        why == "NotAllowedError"
            ? Say($"The camera was not allowed. Allow it in the browser, or type the number.")
            : Say($"The camera gives no picture ({why}). Type the number, or use a reader.");

    public static string More(int count) => Say(Sentence.Count(count, $"Show 1 older", $"Show {count} older"));

    public static string MorePhotographs(int count) =>
        Say(Sentence.Count(count, $"Show 1 more photograph", $"Show {count} more photographs"));

    public static string PapersAtShop(bool released) =>
        released
            ? Say($"Handover sheet and log book are made at the shop, which cannot be reached.")
            : Say($"The log book is made at the shop, which cannot be reached.");

    public static string FewOthers(int count) =>
        count switch
        {
            0 => Say($"No other machine of its figure sheet shows how fast it wears here; three are needed."),
            _ => Say(
                Sentence.Count(
                    count,
                    $"Only 1 other machine of its figure sheet shows how fast it wears here; three are needed.",
                    $"Only {count} other machines of its figure sheet show how fast it wears here; three are needed."
                )
            ),
        };

    public static string Visited(int visits) => Say(Sentence.Count(visits, $"in 1 visit", $"in {visits} visits"));

    public static string NotDrawn(int count) =>
        Say(
            Sentence.Count(
                count,
                $"1 reading is not drawn: its distance is not known, or the odometer went back since.",
                $"{count} readings are not drawn: their distance is not known, or the odometer went back since."
            )
        );
}
