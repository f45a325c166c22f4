using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using Witnessmark.Bench.Photographs;

namespace Witnessmark.Client.Device;

/// <summary>Photographs in this device's own store: kept before anything is said of them, and until the shop has them.</summary>
internal sealed class DevicePhotographs(IJSRuntime js)
{
    private IJSObjectReference? module;

    /// <summary>Why the shop did not take the last one that it refused, or null.</summary>
    public string? Trouble { get; private set; }

    /// <summary>The file that was chosen in an input, shrunk; null when this browser cannot read it as a picture.</summary>
    public async Task<StoredPicture?> Shrunk(ElementReference input) =>
        await (await Module()).InvokeAsync<byte[]>("shrink", input) is { Length: > 0 } drawn
            ? StoredPicture.Of(drawn).Value
            : null;

    /// <summary>Keeps a picture; false when there is no room for it.</summary>
    public async Task<bool> Keep(StoredPicture picture) =>
        await (await Module()).InvokeAsync<bool>("keep", picture.Picture.Sha256, picture.Bytes);

    /// <summary>How many the shop does not have yet.</summary>
    public async Task<int> Unsent() => (await Hashes()).Length;

    /// <summary>Brings to the shop what it does not have. What it refuses stays here and holds up nothing else.</summary>
    public async Task SendAll(Shop shop)
    {
        Trouble = null;
        foreach (var sha256 in await Hashes())
        {
            var picture = await (await Module()).InvokeAsync<byte[]>("bytes", sha256);
            if (await shop.Send(sha256, picture) is { } refused)
                Trouble = refused;
            else
                await NoteSent(sha256, true);
        }
    }

    /// <summary>The shop lost its store, or is another one: all that are still here go again.</summary>
    public async Task NoneAtShop() => await NoteSent(null, false);

    /// <summary>An address for an image: of the picture here, or at the shop. To be given back.</summary>
    public async Task<string> Address(string sha256) => await (await Module()).InvokeAsync<string>("address", sha256);

    /// <summary>An address for a picture that is not kept yet. To be given back.</summary>
    public async Task<string> Address(byte[] picture) => await (await Module()).InvokeAsync<string>("show", picture);

    public async Task GiveBack(string address) => await (await Module()).InvokeVoidAsync("hide", address);

    private async Task<string[]> Hashes() => await (await Module()).InvokeAsync<string[]>("unsent");

    private async Task NoteSent(string? sha256, bool sent) =>
        await (await Module()).InvokeVoidAsync("noteSent", sha256, sent ? 1 : 0);

    private async Task<IJSObjectReference> Module() =>
        module ??= await js.InvokeAsync<IJSObjectReference>("import", "./photographs.js");
}
