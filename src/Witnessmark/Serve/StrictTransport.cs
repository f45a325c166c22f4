using System.Net;

namespace Witnessmark.Serve;

/// <summary>Tells browsers to come by HTTPS alone from now on (RFC 6797), where that can do no harm.</summary>
/// <remarks>
/// Not with the shop's own authority: who has to trust it first must reach the page that leads there, and a browser that was told so
/// offers no way around a certificate that it does not know. Not for addresses, which RFC 6797, 8.1.1 leaves out, and not for
/// localhost. And only where plain HTTP is at port 80: any other port of the same name would be asked for HTTPS too (8.3).
/// </remarks>
public static class StrictTransport
{
    private const string ThirtyDays = "max-age=2592000"; // short: a shop may go back. A choice of this program.

    /// <summary>Says so on each answer where it may.</summary>
    public static void UseStrictTransport(this WebApplication app, Listening listening)
    {
        if (listening is { Certificate: not null, Https: 443, Port: 80 })
            app.Use(
                (context, next) =>
                {
                    if (context.Request.IsHttps && IsName(context.Request.Host.Host))
                        context.Response.Headers.StrictTransportSecurity = ThirtyDays;
                    return next(context);
                }
            );
    }

    /// <summary>Whether a host is a name that others know this server by.</summary>
    private static bool IsName(string host) =>
        !IPAddress.TryParse(host, out _)
        && !host.Equals("localhost", StringComparison.OrdinalIgnoreCase)
        && host.Length > 0;
}
