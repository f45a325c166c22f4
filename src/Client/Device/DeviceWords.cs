using Witnessmark.Bench.Timing;

namespace Witnessmark.Client.Device;

/// <summary>Words about saving and about the shop.</summary>
internal static class DeviceWords
{
    public const string Title = "This device";
    public const string NoAnswer = "The shop does not answer. Work goes on; entries are kept here and sent later.";
    public const string NoShop = "This address serves the program but no shop. Entries are kept here.";
    public const string NeedsShop = "A figure is changed at the shop, so that everybody has it. Nothing was changed.";
    public const string SendNow = "Send now";
    public const string TryNow = "Try now";
    public const string Sending = "Talking to the shop";
    public const string AllSent = "Everything that was saved here is saved at the shop too.";
    public const string Who = "Who works with this device?";
    public const string WhoWhy = "The name stands on every entry made here.";
    public const string Change = "Change";
    public const string Aside = "Set aside at the shop";
    public const string AsideWhy =
        "The shop keeps these whole but cannot put them in order. Tell whoever looks after it.";
    public const string Mistakes = "The shop's files have mistakes";
    public const string NotMet = "This device has not met the shop yet";
    public const string NotMetWhy =
        "It needs the shop once, for its people, machines and figures. After that it works without.";

    public const string ToSettings = "Settings: hand, text, contrast, light or dark, voice, screen";
    public const string Sound = "Sound when a timer is over";
    public const string On = "On";
    public const string Off = "Off";

    public static string Over(int count) => count == 1 ? "Over" : $"{count} over";

    public static string Jumped(ClockJump jump, string by) =>
        jump switch
        {
            ClockJump.Back => $"The clock of this device was set back by {by}. The timers did not follow it.",
            ClockJump.Forward => $"The clock of this device was set forward by {by}. The timers did not follow it.",
            _ =>
                $"This device slept, or its clock was set forward, by {by}. The timers count that as time that passed.",
        };

    public static string Refused(int status) =>
        status == 401
            ? "The shop asks for sign-in. Entries are kept here."
            : $"The shop refused with {status}. Entries are kept here.";

    public static string Name(string device) => $"In entries this device is called {device}.";

    public static string Here(int count) => $"Saved here {count}";

    public static string AtShop(int count) => $"saved at the shop {count}";

    public static string NotYet(int count) =>
        count == 1
            ? "1 entry is saved here and not yet at the shop."
            : $"{count} entries are saved here and not yet at the shop.";

    public static string PhotographsHere(int count) =>
        count == 1
            ? "1 photograph is kept here and not yet at the shop."
            : $"{count} photographs are kept here and not yet at the shop.";

    public static string Space(double used, double all) =>
        $"{used / 1e6:0.0} MB of {all / 1e6:0} MB that the browser gives are used.";

    public const string NoRoom = "There is no room on this device: it was not saved";
    public const string NoRoomWhy =
        "The browser gives its store no more space. What was typed is kept. Send what waits to the shop, or make room on the device, and save once more.";
    public const string Fault = "The program met a fault that it did not expect";
    public const string FaultWhy = "What the screen called saved is saved.";
    public const string OnceMore = "Back to it";

    public const string Kept = "The browser has promised to keep them.";
    public const string NotKept =
        "The browser may clear them when space runs short. Installing Witnessmark on the home screen usually prevents that.";
}
