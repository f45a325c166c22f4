using UglyToad.PdfPig;
using Witnessmark.Tests.LogBooks;
using Witnessmark.Tests.Serve;

namespace Witnessmark.Tests.Papers;

/// <summary>The papers of a job from the server, at their addresses.</summary>
public sealed class PaperEndpointTests : IDisposable
{
    private readonly TempFolder data = new();

    [Fact]
    public async Task Label_and_record_come_from_the_ledger()
    {
        using var shop = RunningShop.Serve(data.Path);
        await TravellingLogBookTests.PostTheDemoJob(shop);
        var stop = TestContext.Current.CancellationToken;
        foreach (var path in (string[])["label.pdf?kind=service", "label.pdf?kind=key&size=70x36&at=24"])
        {
            var label = await shop.Client.GetAsync($"/api/jobs/412/{path}", stop);
            Assert.Equal("application/pdf", label.Content.Headers.ContentType?.MediaType);
            using var pdf = PdfDocument.Open(await label.Content.ReadAsByteArrayAsync(stop));
            Assert.Equal(1, pdf.NumberOfPages);
        }
        var record = await shop.Client.GetAsync("/api/jobs/412/record.html", stop);
        var page = await record.Content.ReadAsStringAsync(stop);
        Assert.Equal("text/html", record.Content.Headers.ContentType?.MediaType);
        Assert.Contains("<title>Fell 640, ", page);
        var policy = Assert.Single(record.Headers.GetValues("Content-Security-Policy"));
        Assert.StartsWith("default-src 'none'; style-src 'sha256-", policy);
        Assert.DoesNotContain("script-src", policy);
        Assert.Equal("nosniff", Assert.Single(record.Headers.GetValues("X-Content-Type-Options")));
    }

    [Theory]
    [InlineData("412/label.pdf", 400, "service and key are")]
    [InlineData("412/label.pdf?kind=wheel", 400, "service and key are")]
    [InlineData("412/label.pdf?kind=key&size=A9", 400, "A8, 62x29, 70x36, 4x2in")]
    [InlineData("412/label.pdf?kind=key&at=-1", 400, "a whole number from 1")]
    [InlineData("412/label.pdf?kind=key&at=2", 409, "1 to 1 are")]
    [InlineData("413/label.pdf?kind=key", 404, "Has the device saved it at the shop?")]
    [InlineData("413/record.html", 404, "Has the device saved it at the shop?")]
    public async Task What_is_not_there_is_said(string path, int status, string said)
    {
        using var shop = RunningShop.Serve(data.Path);
        await TravellingLogBookTests.PostTheDemoJob(shop);
        var stop = TestContext.Current.CancellationToken;
        var reply = await shop.Client.GetAsync($"/api/jobs/{path}", stop);
        Assert.Equal(status, (int)reply.StatusCode);
        Assert.Contains(said, await reply.Content.ReadAsStringAsync(stop));
    }

    public void Dispose() => data.Dispose();
}
