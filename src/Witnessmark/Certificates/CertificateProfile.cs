using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;

namespace Witnessmark.Certificates;

/// <summary>How the two kinds of certificate are made: what each may be used for, for how long, and its number.</summary>
/// <remarks>
/// <para><b>Source.</b> RFC 5280, 4.2 (the profile); CA/Browser Forum, Baseline Requirements, 7.1 (serial numbers, key usage), which
/// bind public authorities only and are kept where they cost nothing.</para>
/// </remarks>
internal static class CertificateProfile
{
    private const string ServerAuthentication = "1.3.6.1.5.5.7.3.1";
    private const int SerialBytes = 16; // Baseline Requirements, 7.1: at least 64 bits drawn by chance; these are 126

    /// <summary>May sign certificates of servers, and no further authority.</summary>
    public static CertificateRequest OfAuthority(X500DistinguishedName name, ECDsa key, NameLimits limits)
    {
        var request = new CertificateRequest(name, key, HashAlgorithmName.SHA256);
        var extensions = request.CertificateExtensions;
        extensions.Add(new X509BasicConstraintsExtension(true, true, 0, critical: true));
        extensions.Add(
            new X509KeyUsageExtension(X509KeyUsageFlags.KeyCertSign | X509KeyUsageFlags.CrlSign, critical: true)
        );
        extensions.Add(ForServers); // nobody signs programs or mail with it, where systems look at this
        extensions.Add(limits.Extension());
        extensions.Add(new X509SubjectKeyIdentifierExtension(request.PublicKey, critical: false));
        return request;
    }

    /// <summary>May prove who a server is, and nothing else.</summary>
    public static CertificateRequest OfServer(ServerNames names, ECDsa key, X509Certificate2 authority)
    {
        var name = new X500DistinguishedNameBuilder();
        name.AddCommonName(names.All.FirstOrDefault(n => n.Length <= AuthorityName.Longest) ?? "witnessmark");
        var request = new CertificateRequest(name.Build(), key, HashAlgorithmName.SHA256);
        var extensions = request.CertificateExtensions;
        extensions.Add(new X509BasicConstraintsExtension(false, false, 0, critical: true));
        extensions.Add(new X509KeyUsageExtension(X509KeyUsageFlags.DigitalSignature, critical: true));
        extensions.Add(ForServers);
        extensions.Add(Of(names));
        extensions.Add(new X509SubjectKeyIdentifierExtension(request.PublicKey, critical: false));
        extensions.Add(
            X509AuthorityKeyIdentifierExtension.CreateFromCertificate(
                authority,
                includeKeyIdentifier: true,
                includeIssuerAndSerial: false
            )
        );
        return request;
    }

    /// <summary>A number by chance, positive and always of the same length.</summary>
    public static byte[] Serial()
    {
        var serial = RandomNumberGenerator.GetBytes(SerialBytes);
        serial[0] = (byte)((serial[0] & 0x3F) | 0x40); // RFC 5280, 4.1.2.2: positive, not zero
        return serial;
    }

    private static X509EnhancedKeyUsageExtension ForServers => new([new(ServerAuthentication)], critical: false);

    private static X509Extension Of(ServerNames names)
    {
        var written = new SubjectAlternativeNameBuilder();
        foreach (var name in names.Dns)
            written.AddDnsName(name);
        foreach (var address in names.Addresses)
            written.AddIpAddress(address);
        return written.Build();
    }
}
