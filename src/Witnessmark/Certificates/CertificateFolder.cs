using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using Witnessmark.Keys;

namespace Witnessmark.Certificates;

/// <summary>The certificates among the keys of a data folder: <c>keys/authority.pem</c> and <c>keys/server.pem</c>, each with its private key.</summary>
public static class CertificateFolder
{
    /// <summary>File of the authority in the data folder.</summary>
    public const string AuthorityFile = "keys/authority.pem";

    /// <summary>File of the server certificate in the data folder.</summary>
    public const string ServerFile = "keys/server.pem";

    private const string EllipticKey = "1.2.840.10045.2.1";

    /// <summary>What people do first where there is none.</summary>
    public const string MakeOne = "Make one first: witnessmark certificate make";

    /// <summary>The shop's authority, or null where none was made.</summary>
    /// <exception cref="FormatException">The file holds none.</exception>
    public static Authority? Authority(string data)
    {
        var path = Path.Combine(data, AuthorityFile);
        return Read(path) is not { } certificate ? null
            : IsAuthority(certificate) ? new(certificate)
            : throw new FormatException($"{path} holds a certificate that may not sign others, or no elliptic key.");
    }

    /// <summary>The server certificate, or null where none was made.</summary>
    /// <exception cref="FormatException">The file holds none.</exception>
    public static X509Certificate2? Server(string data) => Read(Path.Combine(data, ServerFile));

    /// <summary>Keeps a new authority.</summary>
    /// <exception cref="IOException">There is one already: devices trust that one, so it is never written over.</exception>
    public static void Put(string data, Authority authority) =>
        SecretFile.Write(Path.Combine(data, AuthorityFile), Text(authority.Certificate), over: false);

    /// <summary>Keeps a server certificate in place of the one before.</summary>
    public static void Put(string data, X509Certificate2 server) =>
        SecretFile.Write(Path.Combine(data, ServerFile), Text(server), over: true);

    private static string Text(X509Certificate2 certificate)
    {
        using var key = certificate.GetECDsaPrivateKey();
        return $"{certificate.ExportCertificatePem()}\n{key!.ExportPkcs8PrivateKeyPem()}\n";
    }

    private static bool IsAuthority(X509Certificate2 certificate) =>
        certificate.Extensions.OfType<X509BasicConstraintsExtension>().Any(b => b.CertificateAuthority)
        && certificate.PublicKey.Oid.Value == EllipticKey;

    private static X509Certificate2? Read(string path)
    {
        if (!File.Exists(path))
            return null;
        try
        {
            var text = File.ReadAllText(path);
            return X509Certificate2.CreateFromPem(text, text);
        }
        catch (Exception wrong) when (wrong is CryptographicException or ArgumentException)
        {
            throw new FormatException(
                $"{path} holds no certificate with its private key: {wrong.Message} Put the right file back, or move it away.",
                wrong
            );
        }
    }
}
