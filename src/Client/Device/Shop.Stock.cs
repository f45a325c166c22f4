using System.Net;

namespace Witnessmark.Client.Device;

/// <summary>The shop's shelf over HTTP.</summary>
internal sealed partial class Shop
{
    /// <summary>What is there.</summary>
    public async Task<StockReply> Stock() =>
        Read(await Text(() => http.GetAsync("api/stock")), DeviceJson.Default.StockReply);

    /// <summary>Tells what happened; what there is then, or the shop's no. The same id twice counts once.</summary>
    public async Task<(MoveReply? Taken, string? Refused)> Move(MoveRequest move)
    {
        try
        {
            using var answer = await http.PostAsync(
                "api/stock/moves",
                JsonBody.Of(move, DeviceJson.Default.MoveRequest)
            );
            var text = await answer.Content.ReadAsStringAsync();
            if (answer.IsSuccessStatusCode)
                return (Read(text, DeviceJson.Default.MoveReply), null);
            return answer.StatusCode is HttpStatusCode.Conflict or HttpStatusCode.BadRequest
                ? (null, Read(text, DeviceJson.Default.RefusedReply).Error)
                : throw new ShopTrouble(DeviceWords.Refused((int)answer.StatusCode), answer.StatusCode);
        }
        catch (Exception gone) when (gone is HttpRequestException or TaskCanceledException)
        {
            throw new ShopTrouble(DeviceWords.NoAnswer);
        }
    }
}
