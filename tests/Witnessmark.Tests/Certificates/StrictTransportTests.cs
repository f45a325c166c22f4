using System.Net;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.Extensions.Logging;
using Witnessmark.Certificates;
using Witnessmark.Serve;

namespace Witnessmark.Tests.Certificates;

/// <summary>When browsers are bound to HTTPS (RFC 6797), asked of a real Kestrel under the ports that it is told it has.</summary>
public sealed class StrictTransportTests
{
    private static readonly CertificateFile Public = new("public.pem", null, null);

    [Theory]
    [InlineData("bench.example.org", "max-age=2592000")]
    [InlineData("localhost", null)]
    [InlineData("192.168.1.7", null)] // 8.1.1: not for addresses
    [InlineData("[::1]", null)]
    public async Task With_a_public_certificate_names_are_bound_and_addresses_not(string host, string? bound) =>
        Assert.Equal(bound, await Asked(new("", 80, 443) { Certificate = Public }, host));

    [Fact]
    public async Task With_the_shops_own_authority_nobody_is_bound() =>
        Assert.Null(await Asked(new("", 80, 443), "bench.example.org"));

    [Theory]
    [InlineData(5080, 443)]
    [InlineData(80, 5443)]
    public async Task On_other_ports_nobody_is_bound_since_plain_HTTP_there_would_be_asked_for_HTTPS(
        int plain,
        int https
    ) => Assert.Null(await Asked(new("", plain, https) { Certificate = Public }, "bench.example.org"));

    [Fact]
    public async Task Without_HTTPS_nobody_is_bound() =>
        Assert.Null(await Asked(new("", 80, 443) { Certificate = Public }, "bench.example.org", "http"));

    private static async Task<string?> Asked(Listening said, string host, string scheme = "https")
    {
        using var shop = new ShopFolder();
        shop.Made(DateTimeOffset.UtcNow);
        var shown = ShownCertificate.OfShop(shop.Path, TimeProvider.System, TextWriter.Null)!;
        var builder = WebApplication.CreateSlimBuilder();
        builder.Logging.ClearProviders();
        builder.WebHost.UseKestrelHttpsConfiguration().Open(new("", 0, 0) { On = IPAddress.Loopback }, shown);
        await using var app = builder.Build();
        app.UseStrictTransport(said);
        app.MapGet("/", () => "here");
        var stop = TestContext.Current.CancellationToken;
        await app.StartAsync(stop);
        using var handler = new SocketsHttpHandler();
        handler.SslOptions.RemoteCertificateValidationCallback = (_, _, _, _) => true;
        using var client = new HttpClient(handler);
        using var asked = new HttpRequestMessage(
            HttpMethod.Get,
            $"{scheme}://127.0.0.1:{Listening.PortOf(app.Urls, scheme)}"
        );
        asked.Headers.Host = host;
        using var answer = await client.SendAsync(asked, stop);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return answer.Headers.TryGetValues("Strict-Transport-Security", out var values) ? values.Single() : null;
    }
}
