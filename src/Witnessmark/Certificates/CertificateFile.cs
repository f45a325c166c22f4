using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;

namespace Witnessmark.Certificates;

/// <summary>A certificate of a public authority in a file: PKCS #12 (.pfx, .p12), or PEM with its key in the same file or in one of its own.</summary>
/// <param name="Path">The file.</param>
/// <param name="KeyPath">The file of the private key, or null: the same.</param>
/// <param name="Password">What the key is locked with, or null.</param>
public sealed record CertificateFile(string Path, string? KeyPath, string? Password)
{
    /// <summary>Where a password is taken from: an option would stand in the list of processes for all to read.</summary>
    public const string PasswordVariable = "WITNESSMARK_CERTIFICATE_PASSWORD";

    private bool IsPkcs12 => System.IO.Path.GetExtension(Path).ToLowerInvariant() is ".pfx" or ".p12";

    /// <summary>When it was written last; of two files the later.</summary>
    public DateTime Written()
    {
        var certificate = File.GetLastWriteTimeUtc(Path);
        var key = File.GetLastWriteTimeUtc(KeyPath ?? Path);
        return key > certificate ? key : certificate;
    }

    /// <summary>What stands in it.</summary>
    /// <exception cref="FormatException">It holds no certificate with its private key.</exception>
    public CertificateChain Read()
    {
        try
        {
            return IsPkcs12 ? OfPkcs12() : OfPem();
        }
        catch (Exception wrong) when (wrong is CryptographicException or ArgumentException)
        {
            throw new FormatException(
                $"{Path} cannot be used: {wrong.Message} A locked key needs its password in {PasswordVariable}.",
                wrong
            );
        }
    }

    private CertificateChain OfPkcs12()
    {
        var all = X509CertificateLoader.LoadPkcs12CollectionFromFile(Path, Password);
        var server =
            all.FirstOrDefault(c => c.HasPrivateKey) ?? throw new CryptographicException("It holds no private key.");
        all.Remove(server);
        return new(server, all);
    }

    private CertificateChain OfPem()
    {
        var text = File.ReadAllText(Path);
        var key = File.ReadAllText(KeyPath ?? Path);
        var server =
            Password is not null && key.Contains("BEGIN ENCRYPTED PRIVATE KEY", StringComparison.Ordinal)
                ? X509Certificate2.CreateFromEncryptedPem(text, key, Password)
                : X509Certificate2.CreateFromPem(text, key);
        var between = new X509Certificate2Collection();
        between.ImportFromPem(text);
        between.RemoveAt(0); // the server's own stands first
        return new(server.ForHandshakes(), between);
    }
}

/// <summary>A server certificate with its private key, and the certificates between it and an authority that devices know.</summary>
public sealed record CertificateChain(X509Certificate2 Server, X509Certificate2Collection Between);
