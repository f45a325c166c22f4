using Witnessmark.Bench.Timing;

namespace Witnessmark.Client.Device;

/// <summary>Words about saving and about the shop.</summary>
internal static class DeviceWords
{
    public static string Title => Say($"This device");
    public static string NoAnswer =>
        Say($"The shop does not answer. Work goes on; entries are kept here and sent later.");
    public static string Unread => Say($"The shop's answer cannot be read.");

    public static string NoShop => Say($"This address serves the program but no shop. Entries are kept here.");
    public static string NeedsShop =>
        Say($"A figure is changed at the shop, so that everybody has it. Nothing was changed.");
    public static string SendNow => Say($"Send now");
    public static string TryNow => Say($"Try now");
    public static string Sending => Say($"Talking to the shop");
    public static string AllSent => Say($"Everything that was saved here is saved at the shop too.");
    public static string Who => Say($"Who works with this device?");
    public static string WhoWhy => Say($"The name stands on every entry made here.");
    public static string Change => Say($"Change");
    public static string Aside => Say($"Set aside at the shop");
    public static string AsideWhy =>
        Say($"The shop keeps these whole but cannot put them in order. Tell whoever looks after it.");
    public static string Mistakes => Say($"The shop's files have mistakes");
    public static string NotMet => Say($"This device has not met the shop yet");
    public static string NotMetWhy =>
        Say($"It needs the shop once, for its people, machines and figures. After that it works without.");

    public static string ToSettings => Say($"Settings: hand, text, contrast, light or dark, voice, screen");
    public static string Sound => Say($"Sound when a timer is over");
    public static string On => Say($"On");
    public static string Off => Say($"Off");

    public static string Over(int count) => Say(Sentence.Count(count, $"Over", $"{count} over"));

    public static string Jumped(ClockJump jump, string by) =>
        jump switch
        {
            ClockJump.Back => Say($"The clock of this device was set back by {by}. The timers did not follow it."),
            ClockJump.Forward => Say(
                $"The clock of this device was set forward by {by}. The timers did not follow it."
            ),
            _ => Say(
                $"This device slept, or its clock was set forward, by {by}. The timers count that as time that passed."
            ),
        };

    public static string Refused(int status) =>
        status switch
        {
            401 => Say($"The shop asks for sign-in. Entries are kept here."),
            503 => Say(
                $"The shop cannot write just now. Entries are kept here and sent again; tell whoever looks after the shop's computer if it stays so."
            ),
            507 => Say(
                $"The disk of the shop's computer is full. Entries are kept here and sent again; tell whoever looks after it."
            ),
            _ => Say($"The shop refused with {status}. Entries are kept here."),
        };

    public static string Name(string device) => Say($"In entries this device is called {device}.");

    public static string Here(int count) => Say($"Saved here {count}");

    public static string AtShop(int count) => Say($"saved at the shop {count}");

    public static string NotYet(int count) =>
        Say(
            Sentence.Count(
                count,
                $"1 entry is saved here and not yet at the shop.",
                $"{count} entries are saved here and not yet at the shop."
            )
        );

    public static string PhotographsHere(int count) =>
        Say(
            Sentence.Count(
                count,
                $"1 photograph is kept here and not yet at the shop.",
                $"{count} photographs are kept here and not yet at the shop."
            )
        );

    public static string Space(double used, double all) =>
        Say($"{used / 1e6:0.0} MB of {all / 1e6:0} MB that the browser gives are used.");

    public static string NoRoom => Say($"There is no room on this device: it was not saved");
    public static string NoRoomWhy =>
        Say(
            $"The browser gives its store no more space. What was typed is kept. Send what waits to the shop, or make room on the device, and save once more."
        );
    public static string Superseded => Say($"A newer version of the program runs in another tab: it was not saved");
    public static string SupersededWhy =>
        Say($"It took over what this device keeps. What was typed is kept. Load this tab again, and save once more.");
    public static string LoadAgain => Say($"Load this tab again");
    public static string TabIsOld =>
        Say($"A newer version of the program runs in another tab. Load this tab again; what was saved is kept.");

    public static string OtherProtocol(int protocol) =>
        Say(
            $"The shop speaks protocol {protocol}, which this version of the program does not know. Entries are kept here. Load the page again."
        );

    public static string Twin => Say($"Another device writes under the name of this one");
    public static string TwinWhy =>
        Say(
            $"What this device keeps was copied, or brought back from a backup, so that two count their entries alike. The shop keeps both whole, but only one in order. Work on with one of the two; in the browser of the other clear this site's data: it takes a new name then."
        );

    public static string AsideShort(int count) =>
        Say(
            Sentence.Count(count, $"1 entry was set aside at the shop.", $"{count} entries were set aside at the shop.")
        );

    public static string Fault => Say($"The program met a fault that it did not expect");
    public static string FaultWhy => Say($"What the screen called saved is saved.");
    public static string OnceMore => Say($"Back to it");

    public static string Kept => Say($"The browser has promised to keep them.");
    public static string NotKept =>
        Say(
            $"The browser may clear them when space runs short. Installing Witnessmark on the home screen usually prevents that."
        );
}
