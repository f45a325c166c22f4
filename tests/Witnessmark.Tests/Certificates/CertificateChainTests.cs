using System.Diagnostics;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using Witnessmark.Certificates;

namespace Witnessmark.Tests.Certificates;

/// <summary>The chain as others see it: .NET's own verifier, and OpenSSL, which had no part in making it.</summary>
public sealed class CertificateChainTests : IDisposable
{
    private readonly ShopFolder shop = new();

    [Fact]
    public void It_verifies_with_this_authority_and_with_no_other()
    {
        var made = shop.Made(ShopFolder.Noon, "bench-1.local", "192.168.1.7");
        Assert.Equal(X509ChainStatusFlags.NoError, ShopFolder.Verdict(made.Server, made.Authority, ShopFolder.Noon));
        var other = Authority.New("Harrow Lane Motorcycles", ShopFolder.Names(), ShopFolder.Noon);
        Assert.True(ShopFolder.Verdict(made.Server, other, ShopFolder.Noon).HasFlag(X509ChainStatusFlags.PartialChain));
    }

    [Theory]
    [InlineData(-2)]
    [InlineData(397)]
    public void Before_and_after_its_time_it_does_not_count(int days)
    {
        var made = shop.Made(ShopFolder.Noon, "bench-1.local");
        Assert.True(
            ShopFolder
                .Verdict(made.Server, made.Authority, ShopFolder.Noon.AddDays(days))
                .HasFlag(X509ChainStatusFlags.NotTimeValid)
        );
    }

    [Theory]
    [InlineData("bench-1.local", true)]
    [InlineData("another.local", true)] // below a domain that exists in one's own networks only
    [InlineData("10.1.2.3", true)]
    [InlineData("fd12::3", true)]
    [InlineData("bench.example.org", true)] // the authority was made for it
    [InlineData("bank.example", false)]
    [InlineData("example.org", false)]
    [InlineData("notlocal", false)]
    [InlineData("203.0.113.7", false)] // RFC 5737: an address of the internet, for documents
    [InlineData("2001:db8::7", false)]
    public void With_a_stolen_key_nobody_passes_for_what_lies_outside(string name, bool counts)
    {
        var authority = Authority.New("shop", ShopFolder.Names("bench.example.org"), ShopFolder.Noon);
        using var forged = Forged(authority, name);
        var verdict = ShopFolder.Verdict(forged, authority, ShopFolder.Noon);
        Assert.Equal(
            counts ? X509ChainStatusFlags.NoError : X509ChainStatusFlags.HasNotPermittedNameConstraint,
            verdict
        );
        Assert.Equal(counts, OpenSslAccepts(authority.Certificate, forged, name, ShopFolder.Noon).Code == 0);
    }

    [Fact]
    public void OpenSSL_finds_nothing_to_object_to_either()
    {
        var made = shop.Made(DateTimeOffset.UtcNow, "bench-1.local", "192.168.1.7");
        foreach (var name in (string[])["bench-1.local", "192.168.1.7", "127.0.0.1"])
            Assert.Equal((0, "server.pem: OK\n"), OpenSslAccepts(made.Authority.Certificate, made.Server, name, null));
        Assert.NotEqual(0, OpenSslAccepts(made.Authority.Certificate, made.Server, "192.168.1.8", null).Code);
    }

    [Fact]
    public void The_limits_are_read_as_they_were_written()
    {
        var limits = NameLimits.For(ShopFolder.Names("bench-1", "pc.example.org", "deep.local"));
        Assert.Equal(["local", "localhost", "home.arpa", "internal", "bench-1", "pc.example.org"], limits.Domains);
        var read = NameLimits.Of(
            Authority.New("x", ShopFolder.Names("bench-1", "pc.example.org"), ShopFolder.Noon).Certificate
        )!;
        Assert.Equal(limits.Domains, read.Domains);
        Assert.Equal(OwnNetwork.Addresses, read.Addresses);
    }

    public void Dispose() => shop.Dispose();

    /// <summary>What a thief would make: any name, without asking.</summary>
    private static X509Certificate2 Forged(Authority authority, string name)
    {
        using var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        var request = new CertificateRequest("O=forged", key, HashAlgorithmName.SHA256);
        var names = new SubjectAlternativeNameBuilder();
        if (System.Net.IPAddress.TryParse(name, out var address))
            names.AddIpAddress(address);
        else
            names.AddDnsName(name);
        request.CertificateExtensions.Add(names.Build());
        request.CertificateExtensions.Add(new X509EnhancedKeyUsageExtension([new("1.3.6.1.5.5.7.3.1")], false));
        request.CertificateExtensions.Add(
            X509AuthorityKeyIdentifierExtension.CreateFromSubjectKeyIdentifier(
                authority.Certificate.Extensions.OfType<X509SubjectKeyIdentifierExtension>().Single()
            )
        );
        request.CertificateExtensions.Add(new X509SubjectKeyIdentifierExtension(request.PublicKey, false));
        return request.Create(
            authority.Certificate,
            ShopFolder.Noon.AddHours(-1),
            ShopFolder.Noon.AddDays(30),
            [1, 2, 3, 4, 5, 6, 7, 8, 9]
        );
    }

    private (int Code, string Said) OpenSslAccepts(
        X509Certificate2 authority,
        X509Certificate2 server,
        string name,
        DateTimeOffset? at
    )
    {
        File.WriteAllText(shop.In("ca.pem"), authority.ExportCertificatePem());
        File.WriteAllText(shop.In("server.pem"), server.ExportCertificatePem());
        var start = new ProcessStartInfo("openssl")
        {
            WorkingDirectory = shop.Path,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        foreach (var word in "verify -x509_strict -purpose sslserver -no-CApath -CAfile ca.pem".Split(' '))
            start.ArgumentList.Add(word);
        if (at is { } moment)
            foreach (var word in (string[])["-attime", $"{moment.ToUnixTimeSeconds()}"])
                start.ArgumentList.Add(word);
        start.ArgumentList.Add(System.Net.IPAddress.TryParse(name, out _) ? "-verify_ip" : "-verify_hostname");
        start.ArgumentList.Add(name);
        start.ArgumentList.Add("server.pem");
        using var openssl = Process.Start(start)!;
        var said = openssl.StandardOutput.ReadToEnd();
        openssl.WaitForExit();
        return (openssl.ExitCode, said);
    }
}
