using System.Net;
using Witnessmark.Client.OwnShop;

namespace Witnessmark.Client.Device;

/// <summary>A shop of one's own over HTTP.</summary>
internal sealed partial class Shop
{
    /// <summary>Asks for it; null when it is settled, else the shop's no, a mistake on each line.</summary>
    public async Task<string?> SetUp(OwnShopRequest wanted)
    {
        var answer = await Answer(line.Post("api/own-shop", wanted, OwnShopJson.Default.OwnShopRequest));
        Wanted(answer);
        return answer.IsSuccess ? null
            : answer.Status is HttpStatusCode.Conflict or HttpStatusCode.BadRequest or HttpStatusCode.Forbidden
                ? Read(answer.Text, DeviceJson.Default.RefusedReply).Error
            : throw Refused(answer);
    }
}
