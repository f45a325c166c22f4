using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;

namespace Witnessmark.Certificates;

/// <summary>What a certificate says of itself, in the terms that this program works with.</summary>
public static class CertificateFacts
{
    /// <summary>With fewer days left a certificate is renewed; a choice of this program.</summary>
    public const int RenewBelow = 30;

    extension(X509Certificate2 certificate)
    {
        /// <summary>From when on it counts.</summary>
        public DateTimeOffset From => new DateTimeOffset(certificate.NotBefore).ToUniversalTime();

        /// <summary>Until when it counts.</summary>
        public DateTimeOffset Until => new DateTimeOffset(certificate.NotAfter).ToUniversalTime();

        /// <summary>SHA-256 of the whole certificate in pairs of digits, as devices show it.</summary>
        public string Fingerprint =>
            string.Join(':', certificate.GetCertHash(HashAlgorithmName.SHA256).Select(b => b.ToString("X2")));

        /// <summary>Whole days that are left; below zero: it has run out.</summary>
        public int DaysLeft(DateTimeOffset now) => (int)Math.Floor((certificate.Until - now).TotalDays);

        /// <summary>Whether it is time for the next one.</summary>
        public bool IsDue(DateTimeOffset now) => certificate.DaysLeft(now) < RenewBelow;

        /// <summary>The same, as Windows needs it to sign handshakes: with a key that came out of a PKCS #12 file.</summary>
        public X509Certificate2 ForHandshakes() =>
            X509CertificateLoader.LoadPkcs12(certificate.Export(X509ContentType.Pkcs12), null);
    }
}
