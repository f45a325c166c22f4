using System.Net;
using System.Net.Sockets;
using System.Security.Cryptography.X509Certificates;

namespace Witnessmark.Certificates;

/// <summary>The names and addresses that a server certificate is for.</summary>
/// <param name="Dns">Names, in small letters.</param>
/// <param name="Addresses">Addresses.</param>
public sealed record ServerNames(IReadOnlyList<string> Dns, IReadOnlyList<IPAddress> Addresses)
{
    // by which the server's own computer reaches it
    private static readonly ServerNames Itself = new(["localhost"], [IPAddress.Loopback, IPAddress.IPv6Loopback]);

    /// <summary>All of them as text, names first.</summary>
    public IReadOnlyList<string> All => [.. Dns, .. Addresses.Select(a => a.ToString())];

    /// <summary>Those by which another device reaches the server: IPv4 first, which is the shortest to type and needs no name server.</summary>
    public IReadOnlyList<string> FromOutside =>
        [
            .. Addresses
                .Where(a => !IPAddress.IsLoopback(a))
                .OrderBy(a => a.AddressFamily != AddressFamily.InterNetwork)
                .Select(a => a.AddressFamily is AddressFamily.InterNetworkV6 ? $"[{a}]" : a.ToString()),
            .. Dns.Where(d => d != "localhost"),
        ];

    /// <summary>What people gave, and this computer by its own; or what is wrong with one of them.</summary>
    public static (ServerNames? Names, string? Why) Read(IReadOnlyList<string> texts)
    {
        if (texts.Select(ServerName.Refusal).OfType<string>().FirstOrDefault() is { } why)
            return (null, why);
        var addresses = texts.Select(ServerName.Address).OfType<IPAddress>();
        var dns = texts.Where(t => ServerName.Address(t) is null).Select(t => t.ToLowerInvariant());
        return (WithItself(dns, addresses), null);
    }

    /// <summary>
    /// What a computer is reached by in its own network: its name, its name in <c>.local</c>, and its private addresses. What no
    /// certificate of the shop can be for is left out.
    /// </summary>
    public static ServerNames OfComputer(string host, IEnumerable<IPAddress> addresses)
    {
        var name = host.ToLowerInvariant();
        string[] dns = [.. new[] { name, $"{name.Split('.')[0]}.local" }.Where(d => ServerName.Refusal(d) is null)];
        return WithItself(dns, addresses.Where(a => OwnNetwork.Has(a) && !a.IsIPv6LinkLocal && !IsSelfGiven(a)));
    }

    /// <summary>Those in a certificate.</summary>
    public static ServerNames Of(X509Certificate2 certificate)
    {
        var names = certificate.Extensions.OfType<X509SubjectAlternativeNameExtension>().FirstOrDefault();
        return new([.. names?.EnumerateDnsNames() ?? []], [.. names?.EnumerateIPAddresses() ?? []]);
    }

    private static ServerNames WithItself(IEnumerable<string> dns, IEnumerable<IPAddress> addresses) =>
        new([.. dns.Union(Itself.Dns)], [.. addresses.Union(Itself.Addresses)]);

    /// <summary>RFC 3927: an address that the computer took because nobody gave it one; the next one will be another.</summary>
    private static bool IsSelfGiven(IPAddress address) =>
        address.AddressFamily is AddressFamily.InterNetwork && IPNetwork.Parse("169.254.0.0/16").Contains(address);
}
