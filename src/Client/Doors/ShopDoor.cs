using System.Net;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using Witnessmark.Client.Device;

namespace Witnessmark.Client.Doors;

/// <summary>The shop's door over HTTP: an answer, or its no in a sentence.</summary>
/// <exception cref="ShopTrouble">The shop does not answer, or not as it should.</exception>
/// <exception cref="SecretWanted">It wants to be shown once more who somebody is.</exception>
internal sealed class ShopDoor(ShopLine line)
{
    /// <summary>What it says to everybody.</summary>
    public async Task<DoorReply> Look() =>
        (await Ask(line.Get("api/door"), DoorJson.Default.DoorReply)).Reply ?? throw new ShopTrouble(DoorWords.NoDoor);

    public Task<(T? Reply, string? No)> Post<T>(string path, DoorRequest request, JsonTypeInfo<T> type)
        where T : class => Ask(line.Post($"api/door/{path}", request, DoorJson.Default.DoorRequest), type);

    public Task<(T? Reply, string? No)> Get<T>(string path, JsonTypeInfo<T> type)
        where T : class => Ask(line.Get($"api/door/{path}"), type);

    public Task<(EnrolledReply? Reply, string? No)> ShutOut(string device) =>
        Ask(line.Delete($"api/door/devices/{Uri.EscapeDataString(device)}"), DoorJson.Default.EnrolledReply);

    private static async Task<(T? Reply, string? No)> Ask<T>(Task<ShopAnswer> asked, JsonTypeInfo<T> type)
        where T : class
    {
        try
        {
            var answer = await asked;
            if (!answer.IsJson)
                throw new ShopTrouble(DeviceWords.NoShop);
            if (answer.IsSuccess)
                return (JsonSerializer.Deserialize(answer.Text, type), null);
            if (answer.Status == HttpStatusCode.PreconditionRequired)
                throw new SecretWanted();
            var no = JsonSerializer.Deserialize(answer.Text, DeviceJson.Default.RefusedReply)?.Error;
            return (int)answer.Status >= 500 || no is null
                ? throw new ShopTrouble(no ?? DeviceWords.Refused((int)answer.Status), answer.Status)
                : (null, no);
        }
        catch (NoAnswer)
        {
            throw new ShopTrouble(DeviceWords.NoAnswer);
        }
        catch (JsonException)
        {
            throw new ShopTrouble(DoorWords.NoDoor);
        }
    }
}
