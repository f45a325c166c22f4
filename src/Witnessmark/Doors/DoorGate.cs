using System.Net;
using Witnessmark.Serve;

namespace Witnessmark.Doors;

/// <summary>Stands before every address of the API.</summary>
public static class DoorGate
{
    private const string Here = "witnessmark who";

    /// <summary>Puts it there.</summary>
    public static void UseDoor(this WebApplication app) =>
        app.Use(
            async (context, next) =>
            {
                var no = context.Request.Path.StartsWithSegments("/api") ? Refusal(context) : null;
                if (no is null)
                    await next(context);
                else
                    await no.ExecuteAsync(context);
            }
        );

    /// <summary>Who is signed in; null where nobody has to be, and while the door is open.</summary>
    public static SignedIn? Who(this HttpContext context) => context.Items[Here] as SignedIn;

    private static IResult? Refusal(HttpContext context)
    {
        var request = context.Request;
        if (Foreign(request))
            return Failure.Said(403, $"This came from the page of another site. Nothing was done.");
        var door = context.RequestServices.GetRequiredService<Door>();
        if (!door.IsClosed)
            return IsHere(context) ? null : Failure.Said(403, OpenOnlyHere);
        if (!request.IsHttps && !IsHere(context))
            return Failure.Said(403, OnlySafely);
        if (context.GetEndpoint()?.Metadata.GetMetadata<Needs>() is not { } needs)
            return Failure.Said(403, $"Nobody may do this.");
        var who = DoorCookie.Session.Of(request) is { } token ? door.Who(token, deed: IsDeed(request)) : null;
        context.Items[Here] = who;
        return Refusal(needs, who, door) ?? NotShown(context, who, door) ?? Noted(door, needs, who, request);
    }

    private static IResult? Refusal(Needs needs, SignedIn? who, Door door)
    {
        if (needs.Role is not { } role)
            return null;
        if (who is null)
            return Failure.Said(401, $"The shop asks you to sign in.");
        if (who.Role >= role)
            return null;
        Sentence why = $"This is for a {role.Word()}; you are signed in as {who.Role.Word()}.";
        door.Note(DoorEvents.Refused, who, BookLine.NotForThem(who.Person, role.Word()));
        return Failure.Said(403, why);
    }

    private static IResult? NotShown(HttpContext context, SignedIn? who, Door door) =>
        who is null
        || context.GetEndpoint()?.Metadata.GetMetadata<ShownLately>() is null
        || door.ShownLately(who, DoorCookie.Session.Of(context.Request)!, DoorCookie.Shown.Of(context.Request))
            ? null
            : Failure.Said(428, $"Show once more who you are: an open session is not enough for this.");

    private static IResult? Noted(Door door, Needs needs, SignedIn? who, HttpRequest request)
    {
        if (needs.Export is { } what && who is not null)
            door.Note(DoorEvents.Exported, who, BookLine.Took(who.Person, what, request.Path));
        return null;
    }

    // what changes something is done by a person; a page that fetches by itself is no sign of one
    private static bool IsDeed(HttpRequest request) => !IsSafe(request);

    private static bool IsSafe(HttpRequest request) =>
        HttpMethods.IsGet(request.Method) || HttpMethods.IsHead(request.Method);

    /// <summary>Whether another site's page made the browser send it.</summary>
    /// <remarks><b>Source.</b> W3C Fetch Metadata Request Headers, 2.3 Sec-Fetch-Site; RFC 6454, 7 Origin, for browsers without it.</remarks>
    private static bool Foreign(HttpRequest request)
    {
        if (IsSafe(request))
            return false;
        var site = request.Headers["Sec-Fetch-Site"].ToString();
        if (site.Length > 0)
            return site is not ("same-origin" or "none");
        var origin = request.Headers.Origin.ToString();
        return origin.Length > 0 && !(Uri.TryCreate(origin, UriKind.Absolute, out var from) && IsSame(from, request));
    }

    private static bool IsSame(Uri from, HttpRequest request) =>
        string.Equals(from.Authority, request.Host.Value, StringComparison.OrdinalIgnoreCase)
        || string.Equals($"{from.Host}:{from.Port}", request.Host.Value, StringComparison.OrdinalIgnoreCase);

    // by both: a page of elsewhere may name this computer by a name of its own, and a proxy may speak from here for the whole network
    private static bool IsHere(HttpContext context) =>
        PlainHttp.IsOfThisComputer(context) && IsThisComputer(context.Request.Host.Host);

    internal static bool IsThisComputer(string host) =>
        host == "localhost"
        || (IPAddress.TryParse(host.Trim('[', ']'), out var address) && IPAddress.IsLoopback(address));

    private static Sentence OnlySafely =>
        $"With its door closed the shop speaks over https only, where nobody on the way can listen. Open its https address.";

    private static Sentence OpenOnlyHere =>
        $"This shop's door was never closed: it speaks only to the computer that it runs on. A lead closes it there, and lets other devices in.";
}
