using Microsoft.JSInterop;

namespace Witnessmark.Client.Settings;

/// <summary>The screen of this device, which goes dark by itself unless it is kept awake.</summary>
internal sealed class ScreenAwake(IJSRuntime js)
{
    private Task<IJSInProcessObjectReference>? module;

    /// <summary>Whether this browser can keep it awake.</summary>
    public async Task<bool> Can() => (await Module()).Invoke<bool>("can");

    public async Task Keep(bool on) => (await Module()).InvokeVoid("keep", on);

    private Task<IJSInProcessObjectReference> Module() =>
        module ??= js.InvokeAsync<IJSInProcessObjectReference>("import", "./awake.js").AsTask();
}
