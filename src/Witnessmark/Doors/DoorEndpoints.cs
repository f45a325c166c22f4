using Witnessmark.Ledger.Doors;
using Witnessmark.Serve;

namespace Witnessmark.Doors;

/// <summary>The door over HTTP.</summary>
internal static class DoorEndpoints
{
    private const int LongestText = 300;

    /// <summary>Its addresses.</summary>
    public static void MapDoor(this RouteGroupBuilder api)
    {
        api.MapGet("/door", Get).ForAnyone();
        api.MapPost("/door/close", Close).ForAnyone().Limited();
        api.MapPost("/door/enrol", Enrol).ForAnyone().Limited();
        api.MapPost("/door/names", Names).ForAnyone().Limited();
        api.MapPost("/door/sign-in", SignIn).ForAnyone().Limited();
        api.MapPost("/door/start", Start).ForAnyone().Limited();
        api.MapPost("/door/here", (HttpContext context) => Results.Json(You(context.Who()))).ForReaders();
        api.MapPost("/door/confirm", Confirm).ForTechnicians().Limited();
        api.MapPost("/door/word", GiveWord).ForTechnicians().Limited();
        api.MapPost("/door/show", Show).ForLeads().Limited();
        api.MapPost("/door/secret", Change).ForReaders().Limited();
        api.MapPost("/door/sign-out", SignOut).ForAnyone();
        api.MapDoorBook();
    }

    /// <summary><c>GET /api/door</c>: whether it is closed, who is in, here and where else, and a number to sign.</summary>
    private static IResult Get(HttpContext context, Door door)
    {
        if (!door.IsClosed)
            return Results.Json(new { Closed = false });
        var who = DoorCookie.Session.Of(context.Request) is { } token ? door.Who(token, deed: false) : null;
        return Results.Json(
            new
            {
                Closed = true,
                You = You(who),
                Nonce = door.NewNonce(),
                Elsewhere = who is null ? null : door.ElsewhereOf(who),
            }
        );
    }

    /// <summary><c>POST /api/door/close</c>: the lead gets a passphrase, this device is let in, and the lead is signed in.</summary>
    private static IResult Close(CloseAsked asked, HttpContext context, Door door)
    {
        if (door.IsClosed)
            return Failure.Said(409, $"The door is closed already.");
        if (Unfit(asked.Lead, asked.Secret, asked.Device, asked.Label, asked.X, asked.Y) is { } wrong)
            return wrong;
        var device = Device(asked.Device, asked.Label, asked.X, asked.Y, asked.Shared);
        return CameIn(door.CloseOn(device, asked.Lead ?? "", asked.Secret ?? ""), context);
    }

    private static IResult Enrol(EnrolAsked asked, Door door)
    {
        if (Unfit(asked.Code, asked.Device, asked.Label, asked.X, asked.Y, asked.Nonce, asked.Signature) is { } wrong)
            return wrong;
        var device = Device(asked.Device, asked.Label, asked.X, asked.Y, asked.Shared);
        var let = door.LetIn(asked.Code ?? "", device, asked.Nonce ?? "", asked.Signature ?? "");
        return let.No is { } no ? Failure.Said(let.Status, no) : Results.Json(new { let.Yes!.Label, let.Yes.LetInBy });
    }

    private static IResult Names(SignInAsked asked, Door door)
    {
        if (Unfit(asked) is { } wrong)
            return wrong;
        var names = door.Names(asked.Proof);
        return names.No is { } no
            ? Failure.Said(names.Status, no)
            : Results.Json(
                new
                {
                    People = names.Yes!.Select(p => new
                    {
                        p.Name,
                        Role = p.Role.Word(),
                        p.Started,
                    }),
                    Nonce = door.NewNonce(),
                }
            );
    }

    private static IResult SignIn(SignInAsked asked, HttpContext context, Door door) =>
        Unfit(asked) ?? CameIn(door.SignIn(asked.Proof, asked.Person ?? "", asked.Secret ?? ""), context);

    private static IResult Start(SignInAsked asked, HttpContext context, Door door) =>
        Unfit(asked)
        ?? CameIn(door.Start(asked.Proof, asked.Person ?? "", asked.Code ?? "", asked.Secret ?? ""), context);

    private static IResult Confirm(ConfirmAsked asked, HttpContext context, Door door)
    {
        if (context.Who() is not { } who)
            return Failure.Said(409, $"The door is open: nobody has to confirm anything.");
        if (Unfit(asked.Job, asked.Secret) is { } wrong)
            return wrong;
        var given = door.Confirm(who, asked.Job ?? "", asked.Secret ?? "");
        return given.No is { } no ? Failure.Said(given.Status, no) : Results.Json(new { Confirmed = given.Yes });
    }

    /// <summary><c>POST /api/door/word</c>: whoever an entry names shows that it is they, on the device that writes it.</summary>
    private static IResult GiveWord(WordAsked asked, HttpContext context, Door door)
    {
        if (context.Who() is not { } who)
            return Failure.Said(409, $"The door is open: nobody has to give their word.");
        if (Unfit(asked.Job, asked.Kind, asked.Person, asked.Secret, asked.About, asked.Figure) is { } wrong)
            return wrong;
        if (asked is not { Word: { } word, Job: { } job })
            return Failure.Said(400, $"There is no word for that.");
        var given = door.GiveWord(who, word, job, asked.Secret ?? "");
        return given.No is { } no ? Failure.Said(given.Status, no) : Results.Json(new { Confirmed = given.Yes });
    }

    /// <summary><c>POST /api/door/show</c>: an open session alone lets nobody in and shuts nobody out.</summary>
    private static IResult Show(ShowAsked asked, HttpContext context, Door door)
    {
        if (context.Who() is not { } who)
            return Failure.Said(409, $"The door is open: nobody has to show anything.");
        if (Unfit(asked.Secret) is { } wrong)
            return wrong;
        var shown = door.ShowAgain(who, DoorCookie.Session.Of(context.Request)!, asked.Secret ?? "");
        if (shown.No is { } no)
            return Failure.Said(shown.Status, no);
        DoorCookie.Shown.Give(context, shown.Yes!);
        return Results.Json(You(who));
    }

    /// <summary><c>POST /api/door/secret</c>: another secret in place of one's own.</summary>
    private static IResult Change(ChangeAsked asked, HttpContext context, Door door)
    {
        if (context.Who() is not { } who)
            return Failure.Said(409, $"The door is open: nobody has a secret.");
        return Unfit(asked.Secret, asked.Next)
            ?? CameIn(door.ChangeSecret(who, asked.Secret ?? "", asked.Next ?? ""), context);
    }

    private static IResult SignOut(HttpContext context, Door door)
    {
        if (DoorCookie.Session.Of(context.Request) is { } token)
            door.SignOut(token);
        DoorCookie.Session.Take(context);
        return Results.Json(new { Closed = door.IsClosed });
    }

    private static IResult CameIn(Answered<CameIn> came, HttpContext context)
    {
        if (came.No is { } no)
            return Failure.Said(came.Status, no);
        DoorCookie.Session.Give(context, came.Yes!.Token);
        return Results.Json(You(came.Yes.You));
    }

    private static object? You(SignedIn? who) =>
        who is null
            ? null
            : new
            {
                who.Person,
                Role = who.Role.Word(),
                who.Device,
                who.Until,
            };

    private static KeptDevice Device(string? id, string? label, string? x, string? y, bool shared) =>
        new(id ?? "", label ?? "", x ?? "", y ?? "", shared, "", default);

    private static IResult? Unfit(SignInAsked asked) =>
        Unfit(asked.Device, asked.Nonce, asked.Signature, asked.Person, asked.Secret, asked.Code);

    private static IResult? Unfit(params ReadOnlySpan<string?> texts)
    {
        foreach (var text in texts)
            if (text?.Contains('\0') == true)
                return Failure.Said(400, $"One of the texts holds the sign U+0000.");
            else if (text?.Length > LongestText)
                return Failure.Said(
                    400,
                    $"One of the texts has {text.Length} characters; at most {LongestText} are taken."
                );
        return null;
    }
}
