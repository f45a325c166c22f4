using Microsoft.AspNetCore.Components;
using Witnessmark.Client.Device;

namespace Witnessmark.Client.Parts;

/// <summary>A piece of the screen that is drawn again whenever something that it shows may have changed.</summary>
public abstract class Screen : ComponentBase, IDisposable
{
    [Inject]
    internal AtHand Hand { get; set; } = null!;

    /// <summary>Whether it shows anything of how far entries are brought to the shop.</summary>
    protected virtual bool ShowsExchange => true;

    /// <summary>Whether it shows anything of what was done in a job.</summary>
    protected virtual bool ShowsWork => true;

    protected override void OnInitialized()
    {
        if (!ShowsWork)
            Hand.AroundChanged += Again;
        else if (ShowsExchange)
            Hand.Changed += Again;
        else
            Hand.WorkChanged += Again;
    }

    public void Dispose()
    {
        Hand.Changed -= Again;
        Hand.WorkChanged -= Again;
        Hand.AroundChanged -= Again;
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
