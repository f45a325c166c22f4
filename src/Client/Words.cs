namespace Witnessmark.Client;

/// <summary>Words of the start.</summary>
internal static class Words
{
    public const string Name = "Witnessmark";
    public const string Reading = "Reading this device's entries.";
    public const string NoStore = "This browser keeps nothing";
    public const string NoStoreWhy =
        "Entries have to be saved on this device before they go to the shop, and the browser refuses its store. A private window often does. Open Witnessmark in a normal window.";
}
