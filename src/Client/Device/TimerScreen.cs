using Witnessmark.Client.Parts;

namespace Witnessmark.Client.Device;

/// <summary>A piece of the screen that is drawn again each second while a timer runs.</summary>
public abstract class TimerScreen : Screen
{
    private protected DateTimeOffset Now => Hand.Timers.Now;

    protected override bool ShowsExchange => false;

    protected override void OnInitialized()
    {
        base.OnInitialized();
        Hand.Timers.Changed += Tick;
    }

    protected override void Leave() => Hand.Timers.Changed -= Tick;

    private void Tick() => InvokeAsync(StateHasChanged);
}
