using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using Microsoft.Playwright;

namespace Witnessmark.Browser.Tests;

/// <summary>The shop's certificate runs out, with the question of <see cref="FaultTests"/>.</summary>
public sealed class ExpiredCertificateTests(Published published, Chromium chromium)
{
    private const string Host = "localhost";

    [Fact]
    public async Task While_the_certificate_is_over_work_goes_on_and_a_new_one_lets_all_of_it_through()
    {
        var folder = Directory.CreateTempSubdirectory("witnessmark-certificate-");
        var now = DateTimeOffset.UtcNow;
        using var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        using var authority = Authority(key, now);
        var file = Path.Combine(folder.FullName, "server.pem");
        Put(file, authority, now.AddDays(-30), now.AddDays(30));
        await using var shop = await RunningShop.Start(published, certificate: file);
        using var known = KnownShop.As(Host, authority.RawData);
        await using var device = await chromium.Device(knows: known, worker: true);
        var hand = await new BenchHand(await device.Context.NewPageAsync(), shop.Secure).Start();
        await hand.Page.EvaluateAsync("() => navigator.serviceWorker.ready.then(() => true)");
        var before = (await shop.EntryIds()).Count;
        await hand.Point("chain-slack");
        await hand.Read("75", "25");
        await hand.SeesSaved(1, 1);

        await shop.Stop(); // lines that are open would stay open
        Put(file, authority, now.AddDays(-30), now.AddDays(-1));
        await shop.Start();
        await hand.Note("after it was over");
        await hand.SeesSaved(2, 1);
        await hand.Page.ReloadAsync();
        await hand.SeesSaved(2, 1);
        var stranger = await device.Context.NewPageAsync();
        var warned = await Assert.ThrowsAsync<PlaywrightException>(() =>
            stranger.GotoAsync($"{shop.Secure}api/health")
        );
        Assert.Contains("ERR_CERT_DATE_INVALID", warned.Message);
        await stranger.CloseAsync();

        Put(file, authority, now.AddDays(-1), now.AddDays(90));
        await hand.SeesSaved(2, 2);
        Assert.Equal(before + 2, (await shop.EntryIds()).Distinct().Count());
        Assert.Equal(0, await shop.Verify());
        folder.Delete(recursive: true);
    }

    private static X509Certificate2 Authority(ECDsa key, DateTimeOffset now)
    {
        var asked = new CertificateRequest("CN=An authority of the tests", key, HashAlgorithmName.SHA256);
        asked.CertificateExtensions.Add(new X509BasicConstraintsExtension(true, false, 0, true));
        asked.CertificateExtensions.Add(new X509KeyUsageExtension(X509KeyUsageFlags.KeyCertSign, true));
        return asked.CreateSelfSigned(now.AddDays(-60), now.AddDays(365));
    }

    /// <summary>A server certificate with its key, good between two moments, in place of the one before.</summary>
    private static void Put(string file, X509Certificate2 authority, DateTimeOffset from, DateTimeOffset until)
    {
        using var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        var asked = new CertificateRequest($"CN={Host}", key, HashAlgorithmName.SHA256);
        var names = new SubjectAlternativeNameBuilder();
        names.AddDnsName(Host);
        asked.CertificateExtensions.Add(names.Build());
        asked.CertificateExtensions.Add(new X509BasicConstraintsExtension(false, false, 0, true));
        asked.CertificateExtensions.Add(new X509EnhancedKeyUsageExtension([new("1.3.6.1.5.5.7.3.1")], false));
        using var made = asked.Create(authority, from, until, RandomNumberGenerator.GetBytes(8));
        File.WriteAllText(file, made.ExportCertificatePem() + "\n" + key.ExportPkcs8PrivateKeyPem());
    }
}
