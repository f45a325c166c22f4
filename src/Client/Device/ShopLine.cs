using System.Globalization;
using System.Net;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using Microsoft.JSInterop;

namespace Witnessmark.Client.Device;

/// <summary>Nobody answered: no network, no shop, or not in time.</summary>
internal sealed class NoAnswer() : Exception("The shop does not answer.");

/// <summary>
/// The way to the shop: the browser's own fetch, in the language of whoever works here. System.Net.Http does the same, and a phone would have to fetch that
/// first.
/// </summary>
internal sealed class ShopLine(IJSRuntime js)
{
    private const string Json = "application/json";
    private Task<IJSObjectReference>? module;

    /// <exception cref="NoAnswer">There is none.</exception>
    public Task<ShopAnswer> Get(string path, string? tag = null, CancellationToken cancel = default) =>
        Ask("GET", path, null, null, tag, cancel);

    /// <exception cref="NoAnswer">There is none.</exception>
    public Task<ShopAnswer> Post<T>(string path, T value, JsonTypeInfo<T> type) =>
        Post(path, JsonSerializer.SerializeToUtf8Bytes(value, type));

    /// <summary>Posts JSON that is written already.</summary>
    /// <exception cref="NoAnswer">There is none.</exception>
    public Task<ShopAnswer> Post(string path, byte[] json) => Ask("POST", path, json, Json, null, default);

    /// <exception cref="NoAnswer">There is none.</exception>
    public Task<ShopAnswer> Put<T>(string path, T value, JsonTypeInfo<T> type) =>
        Put(path, JsonSerializer.SerializeToUtf8Bytes(value, type), Json);

    /// <exception cref="NoAnswer">There is none.</exception>
    public Task<ShopAnswer> Put(string path, byte[] body, string mediaType) =>
        Ask("PUT", path, body, mediaType, null, default);

    /// <exception cref="NoAnswer">There is none.</exception>
    public Task<ShopAnswer> Delete(string path) => Ask("DELETE", path, null, null, null, default);

    /// <summary>A text that lies beside the program; null when it cannot be had now.</summary>
    public async Task<string?> Beside(string path)
    {
        try
        {
            var answer = await Get(path);
            return answer.IsSuccess ? answer.Text : null;
        }
        catch (NoAnswer)
        {
            return null;
        }
    }

    private async Task<ShopAnswer> Ask(
        string method,
        string path,
        byte[]? body,
        string? mediaType,
        string? tag,
        CancellationToken cancel
    )
    {
        module ??= js.InvokeAsync<IJSObjectReference>("import", "./shop.js").AsTask();
        try
        {
            var line = await module;
            var said = await line.InvokeAsync<string?[]?>(
                "ask",
                cancel,
                [method, path, OwnTongue.Code, body, mediaType, tag]
            );
            return said is [{ } status, { } kind, var name, { } text]
                ? new((HttpStatusCode)int.Parse(status, CultureInfo.InvariantCulture), kind, name, text)
                : throw new NoAnswer();
        }
        catch (Exception gone) when (gone is TaskCanceledException or JSException)
        {
            if (module.IsFaulted)
                module = null; // it could not be fetched either
            throw new NoAnswer();
        }
    }
}
