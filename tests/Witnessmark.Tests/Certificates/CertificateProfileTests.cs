using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using Witnessmark.Certificates;

namespace Witnessmark.Tests.Certificates;

/// <summary>What the certificates say, against RFC 5280 and, where they cost nothing, the Baseline Requirements of the CA/Browser Forum.</summary>
public sealed class CertificateProfileTests : IDisposable
{
    private readonly ShopFolder shop = new();
    private readonly Authority authority;
    private readonly X509Certificate2 server;

    public CertificateProfileTests()
    {
        var made = shop.Made(ShopFolder.Noon, "bench-1", "bench-1.local", "192.168.1.7", "fd00::7");
        (authority, server) = (made.Authority, made.Server);
    }

    // RFC 5280, 4.2.1.9 and 4.2.1.3: an authority says so, critically, and that none may stand below it; it signs certificates
    [Fact]
    public void The_authority_may_sign_servers_and_no_further_authority()
    {
        var basic = Single<X509BasicConstraintsExtension>(authority.Certificate);
        Assert.True(basic is { Critical: true, CertificateAuthority: true, HasPathLengthConstraint: true });
        Assert.Equal(0, basic.PathLengthConstraint);
        var usage = Single<X509KeyUsageExtension>(authority.Certificate);
        Assert.True(usage.Critical);
        Assert.Equal(X509KeyUsageFlags.KeyCertSign | X509KeyUsageFlags.CrlSign, usage.KeyUsages);
        Assert.Equal(["1.3.6.1.5.5.7.3.1"], Purposes(authority.Certificate));
    }

    // RFC 5280, 4.2.1.3, 4.2.1.6, 4.2.1.12; Baseline Requirements, 7.1.2.7: names stand in the alternative name, serverAuth alone
    [Fact]
    public void The_server_is_a_server_by_its_names_and_nothing_else()
    {
        var basic = Single<X509BasicConstraintsExtension>(server);
        Assert.False(basic.CertificateAuthority);
        var usage = Single<X509KeyUsageExtension>(server);
        Assert.Equal((true, X509KeyUsageFlags.DigitalSignature), (usage.Critical, usage.KeyUsages));
        Assert.Equal(["1.3.6.1.5.5.7.3.1"], Purposes(server));
        Assert.Equal(
            ["bench-1", "bench-1.local", "localhost", "192.168.1.7", "fd00::7", "127.0.0.1", "::1"],
            ServerNames.Of(server).All
        );
        Assert.True(server.MatchesHostname("bench-1.local", allowWildcards: false, allowCommonName: false));
        Assert.True(server.MatchesHostname("192.168.1.7", allowWildcards: false, allowCommonName: false));
        Assert.False(server.MatchesHostname("192.168.1.8", allowWildcards: false, allowCommonName: false));
    }

    // Baseline Requirements, 6.1.5 and 7.1.3: P-256 with SHA-256
    [Fact]
    public void Both_are_keys_of_P_256_signed_with_SHA_256()
    {
        foreach (var certificate in (X509Certificate2[])[authority.Certificate, server])
        {
            using var key = certificate.GetECDsaPublicKey()!;
            Assert.Equal("1.2.840.10045.3.1.7", key.ExportParameters(false).Curve.Oid.Value); // secp256r1
            Assert.Equal("1.2.840.10045.4.3.2", certificate.SignatureAlgorithm.Value); // ecdsa-with-SHA256
        }
        using var mine = authority.Certificate.GetECDsaPublicKey()!;
        using var its = server.GetECDsaPublicKey()!;
        Assert.NotEqual(mine.ExportSubjectPublicKeyInfo(), its.ExportSubjectPublicKeyInfo());
    }

    // RFC 5280, 4.2.1.1 and 4.2.1.2: by these a chain is put together
    [Fact]
    public void The_server_names_the_key_that_signed_it()
    {
        var key = Single<X509SubjectKeyIdentifierExtension>(authority.Certificate);
        var signed = Single<X509AuthorityKeyIdentifierExtension>(server);
        Assert.Equal(key.SubjectKeyIdentifierBytes.ToArray(), signed.KeyIdentifier!.Value.ToArray());
    }

    // Apple HT210176: 825 days at most; 398 for public authorities (HT211025), which we keep. RFC 5280, 4.1.2.5: both ends count
    [Fact]
    public void A_server_certificate_lasts_397_days_and_counts_on_a_tablet_that_is_a_day_behind()
    {
        Assert.Equal(TimeSpan.FromDays(397), server.Until - server.From + TimeSpan.FromSeconds(1));
        Assert.Equal(ShopFolder.Noon.AddDays(-1), server.From);
        Assert.Equal(395, server.DaysLeft(ShopFolder.Noon));
        Assert.Equal(3648, authority.Certificate.DaysLeft(ShopFolder.Noon));
    }

    // RFC 5280, 4.1.2.5 with the validity of the issuer: what outlives its authority proves nothing
    [Fact]
    public void A_server_certificate_does_not_outlive_the_authority_and_one_that_has_run_out_signs_no_more()
    {
        var late = authority.Certificate.Until.AddDays(-100);
        Assert.Equal(authority.Certificate.Until, authority.Vouch(ShopFolder.Names("bench-1"), late).Server!.Until);
        var (none, why) = authority.Vouch(ShopFolder.Names("bench-1"), authority.Certificate.Until.AddDays(1));
        Assert.Null(none);
        Assert.StartsWith("The shop's authority ran out on 2036-02-27.", why);
    }

    // Baseline Requirements, 7.1: more than zero, less than 2^159, at least 64 bits out of a random generator
    [Fact]
    public void Numbers_are_drawn_by_chance_and_long_enough()
    {
        var serials = Enumerable
            .Range(0, 64)
            .Select(_ =>
                authority.Vouch(ShopFolder.Names("bench-1"), ShopFolder.Noon).Server!.SerialNumberBytes.ToArray()
            )
            .Append(authority.Certificate.SerialNumberBytes.ToArray())
            .ToList();
        Assert.All(serials, s => Assert.InRange(s.Length, 9, 20));
        Assert.All(serials, s => Assert.InRange(s[0], 0x01, 0x7F));
        // each of the bits but the two that keep it positive and long is sometimes set and sometimes not
        for (var bit = 2; bit < 8 * serials[0].Length; bit++)
            Assert.Equal(2, serials.Select(s => s[bit / 8] >> (7 - bit % 8) & 1).Distinct().Count());
    }

    // RFC 5280, appendix A.1: 64 characters at most for organization and common name
    [Theory]
    [InlineData("Harrow Lane Motorcycles", "Harrow Lane Motorcycles authority ")]
    [InlineData("Zweirad-Werkstatt „Süd“, Inh. A. + B.", "Zweirad-Werkstatt „Süd“, Inh. A. + B. authority ")]
    public void An_authority_is_called_after_its_shop_with_an_id_by_chance(string name, string begins)
    {
        var first = Authority.New(name, ShopFolder.Names(), ShopFolder.Noon).Name;
        Assert.StartsWith(begins, first);
        Assert.NotEqual(first, Authority.New(name, ShopFolder.Names(), ShopFolder.Noon).Name);
    }

    [Fact]
    public void A_long_name_is_cut_between_its_letters()
    {
        var made = Authority.New(string.Concat(Enumerable.Repeat("𝒜", 60)), ShopFolder.Names(), ShopFolder.Noon);
        Assert.InRange(made.Name.Length, 60, 64);
        Assert.DoesNotContain('\uFFFD', made.Name);
        Assert.Matches("^(𝒜)+ authority [0-9a-f]{8}$", made.Name);
    }

    [Fact]
    public void The_fingerprint_is_that_of_the_file_that_devices_fetch()
    {
        var file = authority.Certificate.Export(X509ContentType.Cert);
        Assert.Equal(Convert.ToHexString(SHA256.HashData(file)), authority.Certificate.Fingerprint.Replace(":", ""));
        Assert.Matches("^([0-9A-F]{2}:){31}[0-9A-F]{2}$", authority.Certificate.Fingerprint);
    }

    public void Dispose() => shop.Dispose();

    private static T Single<T>(X509Certificate2 certificate)
        where T : X509Extension => certificate.Extensions.OfType<T>().Single();

    private static IEnumerable<string?> Purposes(X509Certificate2 certificate) =>
        Single<X509EnhancedKeyUsageExtension>(certificate).EnhancedKeyUsages.Cast<Oid>().Select(o => o.Value);
}
