namespace Witnessmark.Doors;

/// <summary>The cookies of the door: no script reads them, no other site's page sends them.</summary>
/// <remarks><b>Source.</b> RFC 6265bis, 4.1.3.2: a name that begins with <c>__Host-</c> is only taken over https, for this host and every path.</remarks>
public sealed class DoorCookie
{
    /// <summary>Holds a session's token.</summary>
    public static readonly DoorCookie Session = new("witnessmark-door");

    /// <summary>Holds that the secret was shown again.</summary>
    public static readonly DoorCookie Shown = new("witnessmark-shown");

    private readonly string plain;

    private DoorCookie(string plain) => this.plain = plain;

    /// <summary>What it holds; null when there is none.</summary>
    public string? Of(HttpRequest request) => request.Cookies[Name(request)];

    /// <summary>Gives it. It ends with the browser; the shop ends what it is good for before.</summary>
    public void Give(HttpContext context, string holds) =>
        context.Response.Cookies.Append(Name(context.Request), holds, Options(context.Request));

    /// <summary>Takes it away.</summary>
    public void Take(HttpContext context) =>
        context.Response.Cookies.Delete(Name(context.Request), Options(context.Request));

    // on this computer's own address there is no https, and no wire that anybody could listen to
    private string Name(HttpRequest request) => request.IsHttps ? "__Host-" + plain : plain;

    private static CookieOptions Options(HttpRequest request) =>
        new()
        {
            HttpOnly = true,
            SameSite = SameSiteMode.Strict,
            Secure = request.IsHttps,
            Path = "/",
        };
}
