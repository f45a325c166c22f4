using System.Net;
using System.Net.NetworkInformation;

namespace Witnessmark.Certificates;

/// <summary>What this computer is called and reached by now.</summary>
public static class ThisComputer
{
    /// <summary>Its names and private addresses.</summary>
    public static ServerNames Names() =>
        ServerNames.OfComputer(
            Dns.GetHostName(),
            NetworkInterface
                .GetAllNetworkInterfaces()
                .Where(n => n.OperationalStatus is OperationalStatus.Up)
                .SelectMany(n => n.GetIPProperties().UnicastAddresses)
                .Select(a => a.Address)
        );
}
