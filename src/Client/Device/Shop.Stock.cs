using System.Net;

namespace Witnessmark.Client.Device;

/// <summary>The shop's shelf over HTTP.</summary>
internal sealed partial class Shop
{
    /// <summary>What is there.</summary>
    public async Task<StockReply> Stock() => Read(await Text(line.Get("api/stock")), DeviceJson.Default.StockReply);

    /// <summary>Tells what happened; what there is then, or the shop's no. The same id twice counts once.</summary>
    public async Task<(MoveReply? Taken, string? Refused)> Move(MoveRequest move)
    {
        var answer = await Answer(line.Post("api/stock/moves", move, DeviceJson.Default.MoveRequest));
        return answer.IsSuccess ? (Read(answer.Text, DeviceJson.Default.MoveReply), null)
            : answer.Status is HttpStatusCode.Conflict or HttpStatusCode.BadRequest
                ? (null, Read(answer.Text, DeviceJson.Default.RefusedReply).Error)
            : throw Refused(answer);
    }
}
