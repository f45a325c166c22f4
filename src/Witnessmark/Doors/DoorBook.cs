using Witnessmark.Certificates;
using Witnessmark.Languages;
using Witnessmark.Serve;

namespace Witnessmark.Doors;

/// <summary>What leads see and do: people, devices, and what happened.</summary>
internal static class DoorBook
{
    private const int Newest = 200;

    /// <summary>Its addresses.</summary>
    public static void MapDoorBook(this RouteGroupBuilder api)
    {
        api.MapGet("/door/book", Get).ForLeads();
        api.MapPost("/door/device-code", DeviceCode).ForLeads().ShownLately();
        api.MapPost("/door/people/{name}/code", StartCode).ForLeads().ShownLately();
        api.MapDelete("/door/devices/{id}", ShutOut).ForLeads().ShownLately();
    }

    private static IResult Get(Door door) => door.IsClosed ? Results.Json(door.Book(Newest)) : Open();

    private static IResult DeviceCode(HttpContext context, Door door) =>
        context.Who() is { } lead ? CodeOf(door.DeviceCode(lead.Person), context.Request) : Open();

    private static Sentence Label => $"QR code of the address";

    /// <summary>The code, and where another device can use the address that the lead has, the address with it as a drawing.</summary>
    private static IResult CodeOf(string code, HttpRequest request) =>
        Results.Json(
            new
            {
                Code = code,
                Picture = request.IsHttps && !DoorGate.IsThisComputer(request.Host.Host)
                    ? TrustCode
                        .Svg($"https://{request.Host.Value}/#{code}", Label.In(AskedTongue.Of(request)))
                        .Replace("<svg ", "<svg xmlns=\"http://www.w3.org/2000/svg\" ", StringComparison.Ordinal)
                    : null,
            }
        );

    private static IResult StartCode(string name, HttpContext context, Door door)
    {
        if (context.Who() is not { } lead)
            return Open();
        var code = door.StartCode(name, lead.Person);
        return code.No is { } no ? Failure.Said(code.Status, no) : Results.Json(new { Code = code.Yes });
    }

    private static IResult ShutOut(string id, HttpContext context, Door door)
    {
        if (context.Who() is not { } lead)
            return Open();
        var done = door.ShutOut(id, lead.Person);
        return done.No is { } no ? Failure.Said(done.Status, no) : Results.Json(new { done.Yes!.Label });
    }

    private static IResult Open() => Failure.Said(409, $"The door is open: there is nobody to let in.");
}
