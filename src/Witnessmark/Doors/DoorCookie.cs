namespace Witnessmark.Doors;

/// <summary>The cookie that holds a session's token: no script reads it, no other site's page sends it.</summary>
/// <remarks><b>Source.</b> RFC 6265bis, 4.1.3.2: a name that begins with <c>__Host-</c> is only taken over https, for this host and every path.</remarks>
public static class DoorCookie
{
    private const string Plain = "witnessmark-door";
    private const string Secure = "__Host-" + Plain;

    /// <summary>The token; null when there is none.</summary>
    public static string? Of(HttpRequest request) => request.Cookies[Name(request)];

    /// <summary>Gives it. It ends with the browser; the shop ends the session before.</summary>
    public static void Give(HttpContext context, string token) =>
        context.Response.Cookies.Append(Name(context.Request), token, Options(context.Request));

    /// <summary>Takes it away.</summary>
    public static void Take(HttpContext context) =>
        context.Response.Cookies.Delete(Name(context.Request), Options(context.Request));

    // on this computer's own address there is no https, and no wire that anybody could listen to
    private static string Name(HttpRequest request) => request.IsHttps ? Secure : Plain;

    private static CookieOptions Options(HttpRequest request) =>
        new()
        {
            HttpOnly = true,
            SameSite = SameSiteMode.Strict,
            Secure = request.IsHttps,
            Path = "/",
        };
}
