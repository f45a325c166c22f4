using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;

namespace Witnessmark.Certificates;

/// <summary>The shop's own certificate authority. Its private key never leaves the file that it stands in.</summary>
/// <param name="Certificate">Its certificate, with the private key.</param>
public sealed record Authority(X509Certificate2 Certificate)
{
    /// <summary>
    /// Apple, "Requirements for trusted certificates in iOS 13 and macOS 10.15" (HT210176): 825 days at most, whoever made the authority;
    /// 398 (HT211025) was the bound of public authorities, and no system asks a shop's own for less.
    /// </summary>
    private static readonly TimeSpan ServerLife = TimeSpan.FromDays(397);

    private static readonly TimeSpan Life = TimeSpan.FromDays(3650); // a choice of this program

    // A tablet whose clock is a day behind takes a new certificate at once. A choice of this program.
    private static readonly TimeSpan Leeway = TimeSpan.FromDays(1);

    /// <summary>What devices list it as.</summary>
    public string Name => Certificate.GetNameInfo(X509NameType.SimpleName, forIssuer: false);

    /// <summary>A new one for a shop, which vouches for these names and for what exists in one's own networks only.</summary>
    public static Authority New(string shop, ServerNames names, DateTimeOffset now)
    {
        using var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        var name = AuthorityName.Of(shop);
        var request = CertificateProfile.OfAuthority(name, key, NameLimits.For(names));
        var (from, until) = Span(now, Life);
        var signs = X509SignatureGenerator.CreateForECDsa(key);
        using var shown = request.Create(name, signs, from, until, CertificateProfile.Serial());
        return new(shown.CopyWithPrivateKey(key));
    }

    /// <summary>A new server certificate with its private key, or why there is none.</summary>
    public (X509Certificate2? Server, string? Why) Vouch(ServerNames names, DateTimeOffset now)
    {
        if (NameLimits.Of(Certificate)?.Refusal(names) is { } why)
            return (null, why);
        if (now >= Certificate.Until)
            return (
                null,
                $"The shop's authority ran out on {Certificate.Until:yyyy-MM-dd}. Move keys/authority.pem away and make another, which every device has to trust anew."
            );
        using var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        var request = CertificateProfile.OfServer(names, key, Certificate);
        var (from, until) = Span(now, ServerLife);
        using var shown = request.Create(
            Certificate,
            from < Certificate.From ? Certificate.From : from,
            until > Certificate.Until ? Certificate.Until : until,
            CertificateProfile.Serial()
        );
        return (shown.CopyWithPrivateKey(key), null);
    }

    /// <summary>RFC 5280, 4.1.2.5: both ends are within, in whole seconds.</summary>
    private static (DateTimeOffset From, DateTimeOffset Until) Span(DateTimeOffset now, TimeSpan life)
    {
        var from = DateTimeOffset.FromUnixTimeSeconds(now.ToUnixTimeSeconds()) - Leeway;
        return (from, from + life - TimeSpan.FromSeconds(1));
    }
}
