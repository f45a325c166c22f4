using System.Net;
using Witnessmark.Client.OwnShop;

namespace Witnessmark.Client.Device;

/// <summary>A shop of one's own over HTTP.</summary>
internal sealed partial class Shop
{
    /// <summary>Asks for it; null when it is settled, else the shop's no, a mistake on each line.</summary>
    public async Task<string?> SetUp(OwnShopRequest wanted)
    {
        try
        {
            using var answer = await http.PostAsync(
                "api/own-shop",
                JsonBody.Of(wanted, OwnShopJson.Default.OwnShopRequest)
            );
            if (answer.IsSuccessStatusCode)
                return null;
            Wanted(answer);
            var text = await answer.Content.ReadAsStringAsync();
            return answer.StatusCode is HttpStatusCode.Conflict or HttpStatusCode.BadRequest or HttpStatusCode.Forbidden
                ? Read(text, DeviceJson.Default.RefusedReply).Error
                : throw new ShopTrouble(DeviceWords.Refused((int)answer.StatusCode), answer.StatusCode);
        }
        catch (Exception gone) when (gone is HttpRequestException or TaskCanceledException)
        {
            throw new ShopTrouble(DeviceWords.NoAnswer);
        }
    }
}
