using System.Runtime.InteropServices;
using Microsoft.JSInterop;
using Witnessmark.Handbook.Sound;

namespace Witnessmark.Client.Listening;

/// <summary>The browser's microphone.</summary>
internal sealed class Microphone(IJSRuntime js) : IAsyncDisposable
{
    private IJSInProcessObjectReference? module;

    private IJSInProcessObjectReference Module =>
        module ?? throw new InvalidOperationException("The microphone is used before it was started.");

    /// <summary>Begins to listen; empty, or the name of what is in the way.</summary>
    public async Task<string> Start()
    {
        module ??= await js.InvokeAsync<IJSInProcessObjectReference>("import", "./microphone.js");
        return module.Invoke<string>("can") is { Length: > 0 } why ? why : await module.InvokeAsync<string>("start");
    }

    public void Stop() => module?.InvokeVoid("stop");

    public bool Alive => Module.Invoke<bool>("alive");

    /// <summary>Whether the browser evens the sound out although it was asked not to.</summary>
    public bool Evened => Module.Invoke<bool>("evened");

    public void Forget() => Module.InvokeVoid("forget");

    /// <summary>The newest seconds; null while fewer were heard, or none can be.</summary>
    public Recording? Latest(double seconds)
    {
        var rate = Module.Invoke<double>("rate");
        if (rate is < Recording.LeastRate or > Recording.MostRate)
            return null;
        var bytes = Module.Invoke<byte[]>("latest", seconds);
        var samples = MemoryMarshal.Cast<byte, float>(bytes.AsSpan());
        if (samples.Length < (int)(seconds * rate))
            return null;
        var sound = new double[samples.Length];
        for (var i = 0; i < sound.Length; i++)
            sound[i] = samples[i];
        return new(sound, new(rate));
    }

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
            // the page went first, and the microphone with it
        }
    }
}
