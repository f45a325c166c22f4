namespace Witnessmark.Client;

/// <summary>Words of the start.</summary>
internal static class Words
{
    public static string Name => "Witnessmark";
    public static string Reading => Say($"Reading this device's entries.");
    public static string OldTab => Say($"Another tab holds this device's entries");
    public static string OldTabWhy =>
        Say($"It runs an older version of the program. Close it, or load it again, and this one goes on.");
    public static string NoStore => Say($"This browser keeps nothing");
    public static string NoStoreWhy =>
        Say(
            $"Entries have to be saved on this device before they go to the shop, and the browser refuses its store. A private window often does. Open Witnessmark in a normal window."
        );
}
