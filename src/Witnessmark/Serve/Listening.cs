using System.Net;
using Witnessmark.Certificates;

namespace Witnessmark.Serve;

/// <summary>Where the server listens, what it shows there, and which proxies it believes.</summary>
/// <param name="Urls">Addresses without HTTPS; they count where <paramref name="Https"/> is null.</param>
/// <param name="Port">Port without HTTPS.</param>
/// <param name="Https">Port with HTTPS, or null: none.</param>
public sealed record Listening(string Urls, int Port, int? Https)
{
    /// <summary>The usual port with HTTPS: a program may open it without further rights, unlike 443.</summary>
    public const int UsualHttps = 5443;

    /// <summary>Address of this computer that devices come to, or null: all it has.</summary>
    public IPAddress? On { get; init; }

    /// <summary>A certificate of a public authority in place of the shop's own, or null.</summary>
    public CertificateFile? Certificate { get; init; }

    /// <summary>Proxies whose word on who asks, and how, is believed.</summary>
    public IReadOnlyList<IPAddress> Behind { get; init; } = [];

    /// <summary>What is shown to devices; null without HTTPS. Or why the server does not start.</summary>
    /// <exception cref="FormatException">A file holds no certificate.</exception>
    public (ShownCertificate? Shown, string? Why) Shown(DataFolder data, TimeProvider clock, TextWriter says)
    {
        if (Https is null)
            return (null, null);
        if (Certificate is not null)
            return File.Exists(Certificate.Path)
                ? (ShownCertificate.OfFile(Certificate, clock, says), null)
                : (null, $"There is no certificate {Certificate.Path}.");
        return ShownCertificate.OfShop(data.Path, clock, says) is { } shown
            ? (shown, null)
            : (null, $"For HTTPS the shop needs a certificate. {CertificateFolder.MakeOne} --data {data.Path}.");
    }

    /// <summary>The same addresses once more: a port that was any free one is the one that it became.</summary>
    public Listening As(ICollection<string> urls) =>
        Https is null
            ? this with
            {
                Urls = string.Join(';', urls),
            }
            : this with
            {
                Port = PortOf(urls, "http") ?? Port,
                Https = PortOf(urls, "https") ?? Https,
            };

    /// <summary>The port of an address that the server listens at, as soon as it does.</summary>
    public static int? PortOf(IEnumerable<string> urls, string scheme) =>
        urls.Select(BindingAddress.Parse).FirstOrDefault(u => u.Scheme == scheme)?.Port;
}
