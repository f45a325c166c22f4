using System.Security.Cryptography.X509Certificates;

namespace Witnessmark.Certificates;

/// <summary>Makes and renews what a shop shows, and keeps it in its data folder.</summary>
public static class CertificateMaking
{
    /// <summary>A server certificate for these names, by the shop's authority; that is made where there is none.</summary>
    /// <returns>What was made, or why nothing was.</returns>
    /// <exception cref="FormatException">A file among the keys is not what it should be; it is left as it is.</exception>
    public static (Made? Made, string? Why) Make(string data, string shop, ServerNames names, DateTimeOffset now)
    {
        var before = CertificateFolder.Authority(data);
        var authority = before ?? Authority.New(shop, names, now);
        var (server, why) = authority.Vouch(names, now);
        if (server is null)
            return (null, why);
        if (before is null)
            CertificateFolder.Put(data, authority);
        CertificateFolder.Put(data, server);
        return (new(authority, server, before is null), null);
    }

    /// <summary>The next server certificate for the names of the one that is there, with a new key.</summary>
    /// <returns>What was made, or why nothing was.</returns>
    /// <exception cref="FormatException">A file among the keys is not what it should be; it is left as it is.</exception>
    public static (Made? Made, string? Why) Renew(string data, DateTimeOffset now) =>
        CertificateFolder.Authority(data) is null ? (null, $"The shop has no authority. {CertificateFolder.MakeOne}.")
        : CertificateFolder.Server(data) is not { } server
            ? (null, $"The shop has no server certificate. {CertificateFolder.MakeOne}.")
        : Make(data, "", ServerNames.Of(server), now);
}

/// <summary>What was made.</summary>
/// <param name="Authority">The shop's authority.</param>
/// <param name="Server">The new server certificate.</param>
/// <param name="AuthorityIsNew">Whether the authority is new too, so that devices have to trust it first.</param>
public sealed record Made(Authority Authority, X509Certificate2 Server, bool AuthorityIsNew);
