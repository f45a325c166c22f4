using System.Net;
using System.Security.Cryptography.X509Certificates;
using Witnessmark.Certificates;
using Witnessmark.Tests.Serve;

namespace Witnessmark.Tests.Certificates;

/// <summary>A data folder with certificates made at a given time.</summary>
internal sealed class ShopFolder : IDisposable
{
    public static readonly DateTimeOffset Noon = new(2026, 3, 2, 12, 0, 0, TimeSpan.Zero);

    private readonly TempFolder folder = new();

    public string Path => folder.Path;

    public static ServerNames Names(params string[] names) => ServerNames.Read(names).Names!;

    public Made Made(DateTimeOffset at, params string[] names)
    {
        var (made, why) = CertificateMaking.Make(Path, "Harrow Lane Motorcycles", Names(names), at);
        Assert.Null(why);
        return made!;
    }

    public string In(string name) => System.IO.Path.Combine(Path, name);

    /// <summary>A client that knows the public authorities of no system, but these.</summary>
    public static HttpClient Trusting(params X509Certificate2[] authorities) => new(Handler(authorities));

    public static SocketsHttpHandler Handler(params X509Certificate2[] authorities)
    {
        var policy = new X509ChainPolicy
        {
            TrustMode = X509ChainTrustMode.CustomRootTrust,
            RevocationMode = X509RevocationMode.NoCheck,
        };
        policy.CustomTrustStore.AddRange(authorities);
        return new()
        {
            AllowAutoRedirect = false,
            SslOptions = new() { CertificateChainPolicy = policy },
            // a handshake for each request: the tests look at what is shown now
            PooledConnectionLifetime = TimeSpan.Zero,
        };
    }

    public static X509ChainStatusFlags Verdict(X509Certificate2 server, Authority authority, DateTimeOffset at)
    {
        using var chain = new X509Chain { ChainPolicy = { TrustMode = X509ChainTrustMode.CustomRootTrust } };
        chain.ChainPolicy.CustomTrustStore.Add(authority.Certificate);
        chain.ChainPolicy.RevocationMode = X509RevocationMode.NoCheck;
        chain.ChainPolicy.VerificationTime = at.LocalDateTime;
        chain.ChainPolicy.ApplicationPolicy.Add(new("1.3.6.1.5.5.7.3.1"));
        chain.Build(server);
        return chain.ChainStatus.Aggregate(X509ChainStatusFlags.NoError, (all, s) => all | s.Status);
    }

    public static IPAddress[] Addresses(params string[] texts) => [.. texts.Select(IPAddress.Parse)];

    public void Dispose() => folder.Dispose();
}
