using System.Net;

namespace Witnessmark.Certificates;

/// <summary>Addresses and domains that exist within networks of one's own only: nobody on the internet can have them.</summary>
/// <remarks>
/// <para><b>Source.</b> Addresses: RFC 1918, 3 (private); RFC 6598, 7 (shared, also taken by private networks over the internet);
/// RFC 3927, 2.1 and RFC 4291, 2.5.6 (link); RFC 4193, 3.1 (unique local); RFC 1122, 3.2.1.3 and RFC 4291, 2.5.3 (this computer).
/// Domains: RFC 6762, 3 (<c>local</c>); RFC 6761, 6.3 (<c>localhost</c>); RFC 8375, 3 (<c>home.arpa</c>); ICANN board, 29 July 2024 (<c>internal</c>).</para>
/// </remarks>
public static class OwnNetwork
{
    /// <summary>The addresses, as ranges.</summary>
    public static IReadOnlyList<IPNetwork> Addresses { get; } =
    [
        IPNetwork.Parse("10.0.0.0/8"),
        IPNetwork.Parse("172.16.0.0/12"),
        IPNetwork.Parse("192.168.0.0/16"),
        IPNetwork.Parse("100.64.0.0/10"),
        IPNetwork.Parse("169.254.0.0/16"),
        IPNetwork.Parse("127.0.0.0/8"),
        IPNetwork.Parse("fc00::/7"),
        IPNetwork.Parse("fe80::/10"),
        IPNetwork.Parse("::1/128"),
    ];

    /// <summary>The domains.</summary>
    public static IReadOnlyList<string> Domains { get; } = ["local", "localhost", "home.arpa", "internal"];

    /// <summary>Whether an address is one of them.</summary>
    public static bool Has(IPAddress address) => Addresses.Any(network => network.Contains(address));
}
