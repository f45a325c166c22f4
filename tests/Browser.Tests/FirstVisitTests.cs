using Microsoft.Playwright;

namespace Witnessmark.Browser.Tests;

/// <summary>What a device that was never here fetches until its first point is open.</summary>
public sealed class FirstVisitTests(Published published, Chromium chromium)
{
    private const int Bar = 3_000_000; // our own; 24 s over a line of 1 Mbit/s

    [Fact]
    public async Task It_is_no_more_than_3_megabytes()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        List<IRequest> asked = [];
        device.Context.RequestFinished += (_, request) => asked.Add(request);
        var hand = await device.Open(shop);
        await hand.Point("chain-slack");
        var bytes = 0;
        foreach (var request in asked.ToList())
            bytes += (await request.SizesAsync()).ResponseBodySize;
        Assert.InRange(bytes, 1_500_000, Bar); // less than the least would be a visit that was not counted
    }
}
