namespace Witnessmark.Client.Searching;

/// <summary>Calls for the search from wherever a button for it stands.</summary>
internal sealed class SearchCall
{
    public event Action? Made;

    public void Make() => Made?.Invoke();
}
