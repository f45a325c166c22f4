namespace Witnessmark.Client.Doors;

/// <summary>The shop wants to be shown once more who somebody is, before it does what was asked. Nothing was done.</summary>
internal sealed class SecretWanted() : Exception(DoorWords.ShowAgainWhy);
