using System.Net;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.Logging;
using Witnessmark.Serve;

namespace Witnessmark.Tests.Certificates;

/// <summary>Whose word counts on who asks and how; the tests ask from 127.0.0.1.</summary>
public sealed class BehindProxyTests
{
    private const string Told = "https shop.example 203.0.113.9";

    [Theory]
    [InlineData("127.0.0.1", true)]
    [InlineData("10.0.0.9,127.0.0.1", true)]
    [InlineData("10.0.0.9", false)]
    [InlineData("127.0.0.2", false)] // by default all of 127.0.0.0/8 would be believed
    [InlineData("", false)]
    public async Task Only_the_proxies_named_are_believed(string behind, bool believed)
    {
        var seen = await Seen(behind, ("For", "203.0.113.9"), ("Proto", "https"), ("Host", "shop.example"));
        if (believed)
            Assert.Equal(Told, seen);
        else
            Assert.StartsWith("http 127.0.0.1", seen);
    }

    [Fact]
    public async Task Of_several_the_one_that_the_proxy_itself_wrote_counts()
    {
        var seen = await Seen(
            "127.0.0.1",
            ("For", "127.0.0.1, 203.0.113.9"),
            ("Proto", "http, https"),
            ("Host", "evil.example, shop.example")
        );
        Assert.Equal(Told, seen);
    }

    [Fact]
    public async Task What_stands_before_its_word_is_not_believed_even_where_it_names_the_proxy_itself() =>
        Assert.EndsWith(" 127.0.0.1", await Seen("127.0.0.1", ("For", "203.0.113.9, 127.0.0.1")));

    [Fact]
    public async Task The_program_itself_takes_nobodys_word_but_its_proxys()
    {
        using var shop = new ShopFolder();
        shop.Made(DateTimeOffset.UtcNow, "192.168.1.7");
        // somebody else's word: it is this computer that asks, and it gets in
        Assert.Equal(HttpStatusCode.OK, await Page(shop, "10.9.9.9", "http"));
        // the proxy's word: another device asks without HTTPS, and is led to it; or with HTTPS, as far as the proxy
        Assert.Equal(HttpStatusCode.TemporaryRedirect, await Page(shop, "127.0.0.1,::1", "http"));
        Assert.Equal(HttpStatusCode.OK, await Page(shop, "127.0.0.1,::1", "https"));
    }

    private static async Task<HttpStatusCode> Page(ShopFolder shop, string behind, string scheme)
    {
        using var server = HttpsServer.Serve(shop.Path, "--https", "0", "--behind", behind);
        using var client = ShopFolder.Trusting();
        using var asked = new HttpRequestMessage(HttpMethod.Get, server.Plain);
        asked.Headers.Add("X-Forwarded-For", "203.0.113.9");
        asked.Headers.Add("X-Forwarded-Proto", scheme);
        using var answer = await client.SendAsync(asked, TestContext.Current.CancellationToken);
        return answer.StatusCode;
    }

    private static async Task<string> Seen(string behind, params (string Header, string Value)[] said)
    {
        var proxies = behind.Split(',', StringSplitOptions.RemoveEmptyEntries).Select(IPAddress.Parse);
        var listening = new Listening("http://127.0.0.1:0", 0, null) { Behind = [.. proxies] };
        var builder = WebApplication.CreateSlimBuilder();
        builder.Logging.ClearProviders();
        builder.WebHost.Open(listening, null);
        await using var app = builder.Build();
        app.UseBehindProxy(listening);
        app.MapGet("/", (HttpContext c) => $"{c.Request.Scheme} {c.Request.Host} {c.Connection.RemoteIpAddress}");
        var stop = TestContext.Current.CancellationToken;
        await app.StartAsync(stop);
        using var client = new HttpClient();
        using var asked = new HttpRequestMessage(HttpMethod.Get, app.Urls.Single());
        foreach (var (header, value) in said)
            asked.Headers.Add($"X-Forwarded-{header}", value);
        using var answer = await client.SendAsync(asked, stop);
        return await answer.Content.ReadAsStringAsync(stop);
    }
}
