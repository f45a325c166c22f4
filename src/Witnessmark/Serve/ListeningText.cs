using Witnessmark.Certificates;

namespace Witnessmark.Serve;

/// <summary>What is said at the start: where to open the shop.</summary>
public static class ListeningText
{
    /// <summary>A line for each way in.</summary>
    /// <param name="urls">Where the server listens.</param>
    /// <param name="listening">How it was told to.</param>
    /// <param name="shown">What it shows to devices, or null without HTTPS.</param>
    public static IEnumerable<string> Lines(ICollection<string> urls, Listening listening, ShownCertificate? shown)
    {
        if (shown is null)
            return [$"Open {string.Join(" or ", urls)} in a browser. Ctrl+C stops."];
        var (plain, https) = (Listening.PortOf(urls, "http"), Listening.PortOf(urls, "https"));
        var names = ServerNames.Of(shown.Server).FromOutside;
        return
        [
            $"At this computer open http://localhost:{plain} in a browser.",
            .. names.Select(name =>
                listening.Certificate is null
                    ? $"On a device first http://{name}:{plain}/trust, then https://{name}:{https}"
                    : $"On a device https://{name}:{https}"
            ),
            .. listening.Certificate is null && IsElsewhere(ServerNames.Of(shown.Server), ThisComputer.Names())
                ? ["This computer has other addresses now than its certificate: witnessmark certificate make"]
                : (string[])[],
            "Ctrl+C stops.",
        ];
    }

    /// <summary>Whether a certificate names addresses, and the computer has none of them any more.</summary>
    public static bool IsElsewhere(ServerNames certificate, ServerNames computer)
    {
        var named = certificate.Addresses.Where(a => !System.Net.IPAddress.IsLoopback(a)).ToList();
        return named.Count > 0 && !named.Intersect(computer.Addresses).Any();
    }
}
