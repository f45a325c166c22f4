using Microsoft.AspNetCore.Components;
using Witnessmark.Client.Device;

namespace Witnessmark.Client.Parts;

/// <summary>A piece of the screen that is drawn again whenever something that it shows may have changed.</summary>
public abstract class Screen : ComponentBase, IDisposable
{
    [Inject]
    internal AtHand Hand { get; set; } = null!;

    protected override void OnInitialized() => Hand.Changed += Again;

    public void Dispose()
    {
        Hand.Changed -= Again;
        Leave();
        GC.SuppressFinalize(this);
    }

    /// <summary>Called when the screen goes away.</summary>
    protected virtual void Leave() { }

    /// <summary>Called before it is drawn again.</summary>
    protected virtual void Refresh() { }

    private void Again() =>
        InvokeAsync(() =>
        {
            Refresh();
            StateHasChanged();
        });
}
