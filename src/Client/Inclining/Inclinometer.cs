using Microsoft.JSInterop;

namespace Witnessmark.Client.Inclining;

/// <summary>Where down is, as the browser tells it.</summary>
internal sealed class Inclinometer(IJSRuntime js) : IAsyncDisposable
{
    private IJSInProcessObjectReference? module;

    /// <summary>Begins to feel; empty, or what is in the way. Takes up to a second where there is nothing.</summary>
    public async Task<string> Start()
    {
        module ??= await js.InvokeAsync<IJSInProcessObjectReference>("import", "./inclination.js");
        return module.Invoke<string>("can") is { Length: > 0 } why ? why : await module.InvokeAsync<string>("start");
    }

    /// <summary>What was felt in the newest seconds: front-back and left-right in turn, degrees.</summary>
    public double[] Latest(double seconds) => module!.Invoke<double[]>("latest", seconds);

    /// <summary>Forgets what was felt so far.</summary>
    public void Forget() => module!.InvokeVoid("forget");

    public async ValueTask DisposeAsync()
    {
        if (module is null)
            return;
        try
        {
            module.InvokeVoid("stop");
            await module.DisposeAsync();
        }
        catch (JSDisconnectedException)
        {
            // the page went first
        }
    }
}
