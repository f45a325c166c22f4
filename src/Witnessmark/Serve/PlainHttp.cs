using System.Net;
using Microsoft.AspNetCore.HttpOverrides;

namespace Witnessmark.Serve;

/// <summary>
/// What plain HTTP gives beside HTTPS: all to this computer itself, for which browsers make no difference; to others the page that
/// leads to trust, and for pages the way to HTTPS.
/// </summary>
public static class PlainHttp
{
    private const int HttpsPort = 443;
    private const string TrustPage = "/trust";
    private const string Font = "/fonts"; // the page is set in it

    /// <summary>From here on only what came by HTTPS, or may come without.</summary>
    public static void UsePlainHttp(this WebApplication app, Listening listening)
    {
        if (listening.Https is null)
            return;
        app.Use(
            (context, next) =>
                context.Request.IsHttps || IsOfThisComputer(context) || MayComePlain(context.Request.Path)
                    ? next(context)
                    : Lead(context, PortOf(app))
        );
    }

    /// <summary>Whether the one who asks sits at this computer. Nobody does for whom a proxy asks: its 127.0.0.1 is another computer's.</summary>
    public static bool IsOfThisComputer(HttpContext context) =>
        !context.Request.Headers.ContainsKey(ForwardedHeadersDefaults.XOriginalForHeaderName)
        && context.Connection.RemoteIpAddress is { } remote
        && IPAddress.IsLoopback(remote.IsIPv4MappedToIPv6 ? remote.MapToIPv4() : remote);

    private static bool MayComePlain(PathString path) =>
        path.StartsWithSegments(TrustPage) || path.StartsWithSegments(Font);

    private static Task Lead(HttpContext context, int port)
    {
        var request = context.Request;
        // What was sent in the open is not taken in: sent again by itself, nobody would notice that it is readable on its way.
        if (!HttpMethods.IsGet(request.Method) && !HttpMethods.IsHead(request.Method))
            return Failure
                .Of(403, "Over this network the shop takes nothing in without HTTPS. Keep it and send it there.")
                .ExecuteAsync(context);
        // a program that asks in the open has to notice
        if (request.Path.StartsWithSegments("/api"))
            return Failure
                .Of(403, "Over this network the shop answers by HTTPS only. Ask at its https address.")
                .ExecuteAsync(context);
        var host = port == HttpsPort ? new(request.Host.Host) : new HostString(request.Host.Host, port);
        // 307, not 308: browsers would remember the way after the shop has gone back to plain HTTP
        return Results
            .Redirect(
                $"https://{host}{request.PathBase}{request.Path.ToUriComponent()}{request.QueryString}",
                false,
                true
            )
            .ExecuteAsync(context);
    }

    /// <summary>The port in use, which is known when the server listens: it may have taken any free one.</summary>
    private static int PortOf(WebApplication app) => Listening.PortOf(app.Urls, "https")!.Value;
}
