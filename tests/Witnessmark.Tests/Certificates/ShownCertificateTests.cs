using System.Net;
using System.Net.Security;
using System.Net.Sockets;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.Extensions.Logging;
using Witnessmark.Certificates;
using Witnessmark.Serve;

namespace Witnessmark.Tests.Certificates;

/// <summary>A real Kestrel with the shop's listening, by a clock that the test moves.</summary>
public sealed class ShownCertificateTests : IDisposable
{
    private readonly ShopFolder shop = new();
    private readonly MovedClock clock = new();
    private readonly StringWriter says = new();

    [Fact]
    public async Task It_is_renewed_while_the_server_runs_and_open_connections_stay()
    {
        var made = shop.Made(ShopFolder.Noon);
        await using var app = await Started(Own());
        var before = await Shown(app);
        Assert.Equal(made.Server.SerialNumber, before);
        using var open = await Connected(app);
        clock.Now = ShopFolder.Noon.AddDays(365); // 30 days left: not yet
        Assert.Equal(before, await Shown(app));
        clock.Now = ShopFolder.Noon.AddDays(366);
        var after = await Shown(app);
        Assert.NotEqual(before, after);
        Assert.Equal(after, CertificateFolder.Server(shop.Path)!.SerialNumber);
        Assert.Equal(395, CertificateFolder.Server(shop.Path)!.DaysLeft(clock.Now));
        Assert.Equal("HTTP/1.1 200 OK", await Asked(open));
        Assert.Equal("", says.ToString());
    }

    [Fact]
    public async Task One_that_was_put_there_meanwhile_is_shown_at_once()
    {
        shop.Made(ShopFolder.Noon);
        await using var app = await Started(Own());
        var made = shop.Made(ShopFolder.Noon, "10.0.0.9");
        Assert.Equal(made.Server.SerialNumber, await Shown(app));
    }

    [Fact]
    public async Task Where_it_cannot_be_renewed_the_one_that_is_there_is_shown_and_it_is_tried_again_in_an_hour()
    {
        var made = shop.Made(ShopFolder.Noon);
        await using var app = await Started(Own());
        File.Move(shop.In("keys/authority.pem"), shop.In("elsewhere.pem"));
        clock.Now = ShopFolder.Noon.AddDays(370);
        Assert.Equal(made.Server.SerialNumber, await Shown(app));
        Assert.Equal(made.Server.SerialNumber, await Shown(app));
        Assert.Single(says.ToString().Trim().Split('\n'));
        Assert.Contains("stays as it is until 2027-04-02: The shop has no authority.", says.ToString());
        File.Move(shop.In("elsewhere.pem"), shop.In("keys/authority.pem"));
        Assert.Equal(made.Server.SerialNumber, await Shown(app));
        clock.Now = clock.Now.AddHours(1);
        Assert.NotEqual(made.Server.SerialNumber, await Shown(app));
    }

    [Fact]
    public async Task A_torn_file_does_not_close_the_shop()
    {
        var made = shop.Made(ShopFolder.Noon);
        await using var app = await Started(Own());
        File.WriteAllText(shop.In("keys/server.pem"), "torn");
        Assert.Equal(made.Server.SerialNumber, await Shown(app));
        Assert.Contains("holds no certificate", says.ToString());
    }

    [Fact]
    public async Task Many_at_once_see_one_renewal()
    {
        shop.Made(ShopFolder.Noon);
        await using var app = await Started(Own());
        clock.Now = ShopFolder.Noon.AddDays(380);
        var serials = await Task.WhenAll(Enumerable.Range(0, 12).Select(_ => Shown(app)));
        Assert.Single(serials.Distinct());
    }

    [Theory]
    [InlineData("one.pem")]
    [InlineData("two.pem")]
    [InlineData("locked.pem")]
    [InlineData("locked.pfx")]
    public async Task One_of_a_public_authority_is_shown_with_what_stands_between_and_read_again_when_it_changes(
        string name
    )
    {
        var file = Put(name, serial: 7);
        await using var app = await Started(ShownCertificate.OfFile(file, clock, says), file);
        Assert.Equal("07", await Shown(app, between: true));
        Put(name, serial: 8);
        File.SetLastWriteTimeUtc(file.Path, File.GetLastWriteTimeUtc(file.Path).AddSeconds(1));
        Assert.Equal("08", await Shown(app, between: true));
        Assert.Equal("", says.ToString());
    }

    [Theory]
    [InlineData("torn.pem", "nonsense", "cannot be used")]
    [InlineData("torn.pfx", "nonsense", "cannot be used")]
    public void A_file_that_holds_none_is_said(string name, string text, string said)
    {
        File.WriteAllText(shop.In(name), text);
        Assert.Contains(
            said,
            Assert.Throws<FormatException>(() => new CertificateFile(shop.In(name), null, null).Read()).Message
        );
    }

    [Fact]
    public void Without_its_password_a_locked_key_stays_locked()
    {
        foreach (var name in (string[])["locked.pem", "locked.pfx"])
            Assert.Contains(
                "WITNESSMARK_CERTIFICATE_PASSWORD",
                Assert.Throws<FormatException>(() => (Put(name, 7) with { Password = null }).Read()).Message
            );
    }

    public void Dispose() => shop.Dispose();

    private ShownCertificate Own() => ShownCertificate.OfShop(shop.Path, clock, says)!;

    private static async Task<WebApplication> Started(ShownCertificate shown, CertificateFile? file = null)
    {
        var listening = new Listening("", 0, 0) { On = IPAddress.Loopback, Certificate = file };
        var builder = WebApplication.CreateSlimBuilder();
        builder.Logging.ClearProviders();
        builder.WebHost.UseKestrelHttpsConfiguration().Open(listening, shown);
        var app = builder.Build();
        app.MapGet("/", () => "here");
        await app.StartAsync(TestContext.Current.CancellationToken);
        return app;
    }

    private static async Task<SslStream> Connected(WebApplication app, Action<X509Certificate2, X509Chain>? seen = null)
    {
        var stop = TestContext.Current.CancellationToken;
        var client = new TcpClient();
        await client.ConnectAsync(IPAddress.Loopback, Listening.PortOf(app.Urls, "https")!.Value, stop);
        var stream = new SslStream(client.GetStream(), leaveInnerStreamOpen: false);
        await stream.AuthenticateAsClientAsync(
            new SslClientAuthenticationOptions
            {
                TargetHost = "localhost",
                RemoteCertificateValidationCallback = (_, certificate, chain, _) =>
                {
                    seen?.Invoke((X509Certificate2)certificate!, chain!);
                    return true;
                },
            },
            stop
        );
        return stream;
    }

    /// <summary>The number of the certificate that a new connection is shown.</summary>
    private static async Task<string> Shown(WebApplication app, bool between = false)
    {
        var serial = "";
        using var stream = await Connected(
            app,
            (certificate, chain) =>
            {
                serial = certificate.SerialNumber;
                if (between)
                    Assert.Contains(chain.ChainPolicy.ExtraStore, c => c.Subject == "CN=Between");
            }
        );
        return serial;
    }

    private static async Task<string?> Asked(SslStream open)
    {
        var stop = TestContext.Current.CancellationToken;
        await open.WriteAsync("GET / HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n"u8.ToArray(), stop);
        using var reader = new StreamReader(open);
        return await reader.ReadLineAsync(stop);
    }

    /// <summary>A server certificate by an authority that stands between, as public ones are handed out.</summary>
    private CertificateFile Put(string name, byte serial)
    {
        using var between = Between();
        using var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        var request = new CertificateRequest("CN=bench.example.org", key, HashAlgorithmName.SHA256);
        using var shown = request.Create(between, ShopFolder.Noon, ShopFolder.Noon.AddDays(90), [serial]);
        using var server = shown.CopyWithPrivateKey(key);
        var path = shop.In(name);
        var chain = $"{server.ExportCertificatePem()}\n{between.ExportCertificatePem()}\n";
        var locked = name.StartsWith("locked", StringComparison.Ordinal);
        var lockedKey = key.ExportEncryptedPkcs8PrivateKeyPem(
            "secret",
            new(PbeEncryptionAlgorithm.Aes256Cbc, HashAlgorithmName.SHA256, 2000)
        );
        var keyText = locked ? lockedKey : key.ExportPkcs8PrivateKeyPem();
        if (name.EndsWith(".pfx", StringComparison.Ordinal))
        {
            var all = new X509Certificate2Collection { server, X509CertificateLoader.LoadCertificate(between.RawData) };
            File.WriteAllBytes(path, all.Export(X509ContentType.Pkcs12, "secret")!);
        }
        else
            File.WriteAllText(path, name == "two.pem" ? chain : chain + keyText);
        var keyPath = name == "two.pem" ? shop.In("two.key") : null;
        if (keyPath is not null)
            File.WriteAllText(keyPath, keyText);
        return new(path, keyPath, locked ? "secret" : null);
    }

    /// <summary>One that may sign and is itself signed, by an authority that nobody needs here.</summary>
    private static X509Certificate2 Between()
    {
        using var root = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        using var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        var request = new CertificateRequest("CN=Between", key, HashAlgorithmName.SHA256);
        request.CertificateExtensions.Add(new X509BasicConstraintsExtension(true, true, 0, critical: true));
        using var shown = request.Create(
            new("CN=Public root"),
            X509SignatureGenerator.CreateForECDsa(root),
            ShopFolder.Noon,
            ShopFolder.Noon.AddDays(1000),
            [1]
        );
        return shown.CopyWithPrivateKey(key);
    }

    private sealed class MovedClock : TimeProvider
    {
        public DateTimeOffset Now { get; set; } = ShopFolder.Noon;

        public override DateTimeOffset GetUtcNow() => Now;
    }
}
