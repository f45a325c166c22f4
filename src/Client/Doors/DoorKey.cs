using Microsoft.JSInterop;

namespace Witnessmark.Client.Doors;

/// <summary>The key of this device, which the browser keeps and nobody reads.</summary>
internal sealed class DoorKey(IJSRuntime js)
{
    private Task<IJSInProcessObjectReference>? module;

    /// <summary>Whether this browser can keep one at this address.</summary>
    public async Task<bool> Can() => (await Module()).Invoke<bool>("can");

    /// <summary>The coordinates of the public key; made on first use.</summary>
    public async Task<(string X, string Y)> Public()
    {
        var coordinates = await (await Module()).InvokeAsync<string[]>("key");
        return (coordinates[0], coordinates[1]);
    }

    /// <summary>Signs what a deed needs; null when this device has no key.</summary>
    public async Task<string?> Sign(string deed, string nonce, string device, string person)
    {
        var statement = string.Join('\n', "witnessmark door 1", deed, nonce, device, person);
        return await (await Module()).InvokeAsync<string>("sign", statement) is { Length: > 0 } made ? made : null;
    }

    public async Task Forget() => await (await Module()).InvokeVoidAsync("forget");

    /// <summary>Calls <c>SomebodyIsHere</c> of the listener when somebody types or touches, at most once in <paramref name="every"/>.</summary>
    public async Task Watch<T>(DotNetObjectReference<T> listener, TimeSpan every)
        where T : class => (await Module()).InvokeVoid("watch", listener, every.TotalMilliseconds);

    private Task<IJSInProcessObjectReference> Module() =>
        module ??= js.InvokeAsync<IJSInProcessObjectReference>("import", "./door.js").AsTask();
}
