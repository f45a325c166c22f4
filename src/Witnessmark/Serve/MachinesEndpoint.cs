using Witnessmark.Doors;
using Witnessmark.Machines;

namespace Witnessmark.Serve;

/// <summary>The shop's register of machines.</summary>
public static class MachinesEndpoint
{
    private const int LongestText = 200;

    /// <summary><c>GET /api/machines?find=</c></summary>
    public static IResult Find(string? find, ServedShop shop) =>
        find?.Length > LongestText
            ? Failure.Of(400, $"find: {find.Length} characters; at most {LongestText} are allowed.")
        : find is not null && FoundAnswer.Of(find, shop.Place.MachinesIfThere()) is { } answer ? Results.Json(answer)
        : Failure.Of(400, FoundAnswer.TooShort(find));

    /// <summary><c>GET /api/machines/{id}</c>: the record, its distances, and the jobs that were opened for it.</summary>
    public static IResult Get(string id, ServedShop shop) =>
        shop.Place.MachinesIfThere()?.Machine(id) is { } found
            ? Results.Json(MachineAnswer.Of(found, shop.Ledger.JobsOf(id)))
            : Failure.Of(404, "There is no such machine in the register.");

    /// <summary><c>DELETE /api/machines/{id}/owner</c>: takes away who brings it; <c>forgotten</c> says whether somebody was on record.</summary>
    public static IResult ForgetOwner(string id, ServedShop shop, HttpContext context, Door door)
    {
        if (shop.Place.MachinesIfThere()?.ForgetOwner(id) is not { } known)
            return Failure.Of(404, "There is no such machine in the register.");
        if (context.Who() is { } lead)
            door.Note(DoorEvents.Changed, lead, BookLine.OwnerForgotten(lead.Person, id));
        return Results.Json(new { Forgotten = known });
    }
}
