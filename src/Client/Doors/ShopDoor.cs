using System.Net;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using Witnessmark.Client.Device;

namespace Witnessmark.Client.Doors;

/// <summary>The shop's door over HTTP: an answer, or its no in a sentence.</summary>
/// <exception cref="ShopTrouble">The shop does not answer, or not as it should.</exception>
/// <exception cref="SecretWanted">It wants to be shown once more who somebody is.</exception>
internal sealed class ShopDoor(HttpClient http)
{
    /// <summary>What it says to everybody.</summary>
    public async Task<DoorReply> Look() =>
        (await Ask(() => http.GetAsync("api/door"), DoorJson.Default.DoorReply)).Reply
        ?? throw new ShopTrouble(DoorWords.NoDoor);

    public Task<(T? Reply, string? No)> Post<T>(string path, DoorRequest request, JsonTypeInfo<T> type)
        where T : class =>
        Ask(() => http.PostAsync($"api/door/{path}", JsonBody.Of(request, DoorJson.Default.DoorRequest)), type);

    public Task<(T? Reply, string? No)> Get<T>(string path, JsonTypeInfo<T> type)
        where T : class => Ask(() => http.GetAsync($"api/door/{path}"), type);

    public Task<(EnrolledReply? Reply, string? No)> ShutOut(string device) =>
        Ask(() => http.DeleteAsync($"api/door/devices/{Uri.EscapeDataString(device)}"), DoorJson.Default.EnrolledReply);

    private static async Task<(T? Reply, string? No)> Ask<T>(Func<Task<HttpResponseMessage>> ask, JsonTypeInfo<T> type)
        where T : class
    {
        try
        {
            using var answer = await ask();
            if (answer.Content.Headers.ContentType?.MediaType != "application/json")
                throw new ShopTrouble(DeviceWords.NoShop);
            var text = await answer.Content.ReadAsStringAsync();
            if (answer.IsSuccessStatusCode)
                return (JsonSerializer.Deserialize(text, type), null);
            if (answer.StatusCode == HttpStatusCode.PreconditionRequired)
                throw new SecretWanted();
            var no = JsonSerializer.Deserialize(text, DeviceJson.Default.RefusedReply)?.Error;
            return (int)answer.StatusCode >= 500 || no is null
                ? throw new ShopTrouble(no ?? DeviceWords.Refused((int)answer.StatusCode), answer.StatusCode)
                : (null, no);
        }
        catch (Exception gone) when (gone is HttpRequestException or TaskCanceledException)
        {
            throw new ShopTrouble(DeviceWords.NoAnswer);
        }
        catch (JsonException)
        {
            throw new ShopTrouble(DoorWords.NoDoor);
        }
    }
}
