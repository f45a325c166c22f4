using System.Net;
using System.Net.Http.Json;
using System.Net.Security;
using System.Net.Sockets;
using System.Security.Authentication;
using System.Security.Cryptography;
using Witnessmark.Certificates;
using Witnessmark.Tests.Serve;

namespace Witnessmark.Tests.Certificates;

/// <summary>The real program over HTTPS, and what it still gives without.</summary>
public sealed class HttpsServerTests(HttpsServerTests.OneShop one) : IClassFixture<HttpsServerTests.OneShop>
{
    private readonly CancellationToken stop = TestContext.Current.CancellationToken;

    [Fact]
    public async Task Who_trusts_this_authority_gets_in_and_who_does_not_is_kept_from_it()
    {
        using var trusting = ShopFolder.Trusting(one.Authority.Certificate);
        Assert.Equal("""{"ok":true}""", await trusting.GetStringAsync(new Uri(one.Server.Https, "/api/health"), stop));
        using var other = ShopFolder.Trusting(
            Authority.New("Harrow Lane Motorcycles", ShopFolder.Names(), DateTimeOffset.UtcNow).Certificate
        );
        using var plain = new HttpClient();
        foreach (var stranger in (HttpClient[])[other, plain])
        {
            var refused = await Assert.ThrowsAsync<HttpRequestException>(() =>
                stranger.GetAsync(new Uri(one.Server.Https, "/api/health"), stop)
            );
            Assert.IsType<AuthenticationException>(refused.InnerException);
        }
    }

    // RFC 8996: TLS 1.0 and 1.1 must not be used. A hello is sent by hand: a library of our own might refuse to send it at all.
    [Theory]
    [InlineData(0x01, 0x15)] // TLS 1.0: an alert
    [InlineData(0x02, 0x15)] // TLS 1.1: an alert
    [InlineData(0x03, 0x16)] // TLS 1.2: its hello
    public async Task Old_versions_of_TLS_are_refused(byte version, byte answer)
    {
        using var client = new TcpClient();
        await client.ConnectAsync(IPAddress.Loopback, one.Server.Https.Port, stop);
        await client.GetStream().WriteAsync(Hello(version), stop);
        var reply = new byte[7];
        await client.GetStream().ReadExactlyAsync(reply, stop);
        Assert.Equal(answer, reply[0]);
        if (answer == 0x15)
            Assert.Equal(70, reply[6]); // RFC 5246, 7.2: protocol_version
    }

    // RFC 9325, 4.1 and 4.2: no suite that encrypts in blocks and authenticates apart, none without forward secrecy
    [Theory]
    [InlineData(TlsCipherSuite.TLS_ECDHE_ECDSA_WITH_AES_128_GCM_SHA256, true)]
    [InlineData(TlsCipherSuite.TLS_ECDHE_ECDSA_WITH_AES_128_CBC_SHA256, false)]
    [InlineData(TlsCipherSuite.TLS_ECDHE_ECDSA_WITH_AES_256_CBC_SHA, false)]
    public async Task Only_cipher_suites_that_were_chosen_are_spoken(TlsCipherSuite suite, bool spoken)
    {
        if (!OperatingSystem.IsLinux())
            return; // elsewhere the system chooses
        using var client = new TcpClient();
        await client.ConnectAsync(IPAddress.Loopback, one.Server.Https.Port, stop);
        await using var line = new SslStream(client.GetStream());
        var options = new SslClientAuthenticationOptions
        {
            TargetHost = "localhost",
            EnabledSslProtocols = SslProtocols.Tls12,
            CipherSuitesPolicy = new([suite]),
            RemoteCertificateValidationCallback = (_, _, _, _) => true,
        };
        var refused = await Record.ExceptionAsync(() => line.AuthenticateAsClientAsync(options, stop));
        Assert.Equal(spoken, refused is null);
        Assert.True(spoken || refused is AuthenticationException or IOException, $"{refused}");
    }

    [Theory]
    [InlineData("/")]
    [InlineData("/jobs/412?from=day&x=%C3%BC")]
    public async Task Others_are_led_from_plain_HTTP_to_HTTPS(string path)
    {
        using var client = ShopFolder.Trusting();
        using var answer = await client.SendAsync(FromOutside(HttpMethod.Get, path), stop);
        Assert.Equal(HttpStatusCode.TemporaryRedirect, answer.StatusCode);
        Assert.Equal(new Uri(one.Server.Https, path).AbsoluteUri, answer.Headers.Location!.AbsoluteUri);
        Assert.Equal("nosniff", answer.Headers.GetValues("X-Content-Type-Options").Single());
    }

    [Fact]
    public async Task The_proxys_own_computer_is_not_this_one()
    {
        using var client = ShopFolder.Trusting();
        var asked = new HttpRequestMessage(HttpMethod.Get, one.Server.Plain);
        asked.Headers.Add("X-Forwarded-For", "127.0.0.1");
        using var answer = await client.SendAsync(asked, stop);
        Assert.Equal(HttpStatusCode.TemporaryRedirect, answer.StatusCode);
    }

    [Theory]
    [InlineData("/api/entries?after=0")]
    [InlineData("/api/health")]
    public async Task What_others_ask_of_the_API_without_HTTPS_is_refused_and_not_led_on(string path)
    {
        using var client = ShopFolder.Trusting();
        using var answer = await client.SendAsync(FromOutside(HttpMethod.Get, path), stop);
        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
        Assert.Contains("by HTTPS only", await answer.Content.ReadAsStringAsync(stop));
        Assert.Null(answer.Headers.Location);
    }

    [Fact]
    public async Task What_others_send_without_HTTPS_is_not_taken_in()
    {
        using var client = ShopFolder.Trusting();
        var post = FromOutside(HttpMethod.Post, "/api/entries");
        post.Content = JsonContent.Create(new { protocol = 1 });
        using var answer = await client.SendAsync(post, stop);
        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
        Assert.Contains("without HTTPS", await answer.Content.ReadAsStringAsync(stop));
    }

    [Fact]
    public async Task This_computer_itself_gets_everything_as_ever()
    {
        using var client = ShopFolder.Trusting();
        Assert.Equal("""{"ok":true}""", await client.GetStringAsync(new Uri(one.Server.Plain, "/api/health"), stop));
        using var page = await client.GetAsync(one.Server.Plain, stop);
        Assert.Equal(HttpStatusCode.OK, page.StatusCode);
    }

    [Fact]
    public async Task The_certificate_of_the_authority_is_given_without_its_key()
    {
        using var client = ShopFolder.Trusting(one.Authority.Certificate);
        using var plain = await client.SendAsync(FromOutside(HttpMethod.Get, TrustPage.Download), stop);
        Assert.Equal("application/x-x509-ca-cert", plain.Content.Headers.ContentType!.MediaType);
        var bytes = await plain.Content.ReadAsByteArrayAsync(stop);
        Assert.Equal(one.Authority.Certificate.RawData, bytes);
        Assert.Equal(bytes, await client.GetByteArrayAsync(new Uri(one.Server.Https, TrustPage.Download), stop));
        Assert.Equal(
            one.Authority.Certificate.Fingerprint.Replace(":", ""),
            Convert.ToHexString(SHA256.HashData(bytes))
        );
    }

    [Fact]
    public async Task The_page_that_leads_to_trust_is_there_with_and_without_HTTPS_and_leads_to_the_shop()
    {
        using var client = ShopFolder.Trusting(one.Authority.Certificate);
        using var plain = await client.SendAsync(FromOutside(HttpMethod.Get, "/trust"), stop);
        var page = await plain.Content.ReadAsStringAsync(stop);
        Assert.Equal("text/html", plain.Content.Headers.ContentType!.MediaType);
        Assert.Contains($"<b>{one.Authority.Name}</b>", page);
        Assert.Contains($"href=\"{TrustPage.Download}\"", page);
        Assert.Contains($"href=\"{one.Server.Https}\"", page);
        Assert.DoesNotContain("<script", page);
        Assert.DoesNotContain(one.Authority.Certificate.Fingerprint, page.Replace("<wbr>", "")); // it came the same way as the certificate
        Assert.StartsWith("default-src 'none'", plain.Headers.GetValues("Content-Security-Policy").Single());
        Assert.Contains("Trust this shop", await client.GetStringAsync(new Uri(one.Server.Https, "/trust"), stop));
        using var font = await client.SendAsync(FromOutside(HttpMethod.Get, Font()), stop);
        Assert.Equal(HttpStatusCode.OK, font.StatusCode);

        string Font() => page.Split("url(\"")[1].Split('"')[0];
    }

    [Fact]
    public async Task Read_at_the_shops_computer_the_page_says_the_fingerprint()
    {
        using var client = ShopFolder.Trusting();
        var page = await client.GetStringAsync(new Uri(one.Server.Plain, "/trust"), stop);
        Assert.Contains(one.Authority.Certificate.Fingerprint, page.Replace("<wbr>", ""));
        Assert.Contains($"http://192.168.1.7:{one.Server.Plain.Port}/trust", page);
    }

    [Fact]
    public void At_the_start_it_says_the_ways_in()
    {
        var (plain, https) = (one.Server.Plain.Port, one.Server.Https.Port);
        Assert.Contains($"At this computer open http://localhost:{plain} in a browser.", one.Server.Said);
        Assert.Contains(
            $"On a device first http://192.168.1.7:{plain}/trust, then https://192.168.1.7:{https}",
            one.Server.Said
        );
        Assert.Contains("This computer has other addresses now than its certificate", one.Server.Said);
    }

    [Theory]
    [InlineData(
        "2 For HTTPS the shop needs a certificate. Make one first: witnessmark certificate make --data",
        "serve",
        "--https",
        "--port",
        "0"
    )]
    [InlineData("2 There is no certificate nowhere.pem.", "serve", "--certificate", "nowhere.pem", "--port", "0")]
    [InlineData("2 --urls and --https do not go together", "serve", "--https", "--urls", "http://0.0.0.0:1")]
    [InlineData("2 --on goes with --https", "serve", "--on", "192.168.1.7")]
    [InlineData("2 --on: \"here\" is no address", "serve", "--https", "--on", "here")]
    [InlineData("2 --behind: \"10.0.0.300\" is no address", "serve", "--behind", "10.0.0.2,10.0.0.300")]
    [InlineData("2 --https 70000: 0 to 65535", "serve", "--https", "70000")]
    [InlineData("2 --certificate-key goes with --certificate", "serve", "--certificate-key", "k.pem")]
    public void What_cannot_be_is_said_and_nothing_starts(string said, params string[] words)
    {
        using var folder = new TempFolder();
        using var process = RunningShop.Start([.. words, "--demo", "--data", folder.Path]);
        var errors = process.StandardError.ReadToEnd();
        process.WaitForExit();
        Assert.StartsWith(said, $"{process.ExitCode} {errors}");
    }

    [Fact]
    public void An_address_that_this_computer_does_not_have_is_said()
    {
        using var shop = new ShopFolder();
        shop.Made(DateTimeOffset.UtcNow);
        // RFC 5737: an address for documents, which no computer has
        using var process = RunningShop.Start([
            "serve",
            "--demo",
            "--data",
            shop.Path,
            "--port",
            "0",
            "--https",
            "0",
            "--on",
            "192.0.2.7",
        ]);
        var errors = process.StandardError.ReadToEnd();
        process.WaitForExit();
        Assert.Equal(2, process.ExitCode);
        Assert.StartsWith("The server cannot listen on 192.0.2.7", errors);
    }

    /// <summary>As from another device: the shop is told that 127.0.0.1 is its proxy.</summary>
    private HttpRequestMessage FromOutside(HttpMethod method, string path) =>
        new(method, new Uri(one.Server.Plain, path)) { Headers = { { "X-Forwarded-For", "203.0.113.9" } } };

    /// <summary>RFC 5246, 7.4.1.2: a hello of a given version that offers what each of them knows.</summary>
    private static byte[] Hello(byte version)
    {
        byte[] extensions =
        [
            .. (byte[])[0, 10, 0, 4, 0, 2, 0, 23], // supported groups: P-256
            .. (byte[])[0, 11, 0, 2, 1, 0], // points: uncompressed
            .. (byte[])[0, 13, 0, 6, 0, 4, 4, 3, 2, 3], // signatures: ECDSA with SHA-256, with SHA-1
        ];
        byte[] body =
        [
            3,
            version,
            .. new byte[32],
            0,
            .. (byte[])[0, 6, 0xC0, 0x09, 0xC0, 0x2B, 0x00, 0xFF], // ECDHE-ECDSA with AES-128-CBC and -GCM
            .. (byte[])[1, 0],
            0,
            (byte)extensions.Length,
            .. extensions,
        ];
        return [0x16, 3, 1, 0, (byte)(body.Length + 4), 1, 0, 0, (byte)body.Length, .. body];
    }

    public sealed class OneShop : IDisposable
    {
        private readonly ShopFolder folder = new();

        public OneShop()
        {
            Authority = folder.Made(DateTimeOffset.UtcNow, "192.168.1.7").Authority;
            Server = HttpsServer.Serve(folder.Path, "--https", "0", "--behind", "127.0.0.1,::1");
        }

        public Authority Authority { get; }

        internal HttpsServer Server { get; }

        public void Dispose()
        {
            Server.Dispose();
            folder.Dispose();
        }
    }
}
