namespace Witnessmark.Client.Today;

/// <summary>Words of the day's list and of an arrival.</summary>
internal static class TodayWords
{
    public const string Title = "Today";
    public const string None = "No job on this device yet.";
    public const string Arrival = "A machine arrives";
    public const string Machine = "Which machine?";
    public const string Purpose = "What is it here for?";
    public const string Promised = "Promised for (if it is)";
    public const string Open = "Open the job";
    public const string AnotherMachine = "Another one: find it in the register";
    public const string Sheet = "By which figure sheet?";
    public const string ChooseSheet = "Choose the figure sheet that judges it.";
    public const string ChooseMachine = "Choose the machine first.";
    public const string ChoosePurpose = "Choose what it is here for.";
    public const string NotFound = "There is no such page";

    public static string Points(int count) => count == 1 ? "1 point" : $"{count} points";

    public static string Holds(int count) =>
        count == 0 ? "ready to go"
        : count == 1 ? "1 hold"
        : $"{count} holds";
}
