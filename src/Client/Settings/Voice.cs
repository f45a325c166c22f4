using Microsoft.JSInterop;
using Witnessmark.Bench.Wording;

namespace Witnessmark.Client.Settings;

/// <summary>The browser's voice.</summary>
internal sealed class Voice(IJSRuntime js)
{
    private Task<IJSInProcessObjectReference>? module;

    /// <summary>Whether this browser has one.</summary>
    public async Task<bool> Can() => (await Module()).Invoke<bool>("can");

    /// <summary>Says a sentence, its units and signs as words.</summary>
    public async Task Say(string sentence) =>
        (await Module()).InvokeVoid("say", ReadAloud.Of(sentence, OwnTongue), OwnTongue.Code);

    private Task<IJSInProcessObjectReference> Module() =>
        module ??= js.InvokeAsync<IJSInProcessObjectReference>("import", "./speech.js").AsTask();
}
