using Witnessmark.Serve;

namespace Witnessmark.Groups;

/// <summary>What the servers of a group do not do yet, they say by name: kept beside the store, each server would have its own.</summary>
internal static class NotInGroup
{
    /// <summary>This address does nothing in a group.</summary>
    /// <param name="endpoint">The address.</param>
    /// <param name="why">The sentence that is answered.</param>
    public static RouteHandlerBuilder OnlyInFolder(this RouteHandlerBuilder endpoint, Sentence why) =>
        endpoint.AddEndpointFilter(
            (context, next) =>
                context.HttpContext.RequestServices.GetRequiredService<ServedShop>().Place.IsOfGroup
                    ? ValueTask.FromResult<object?>(Failure.Said(StatusCodes.Status501NotImplemented, why))
                    : next(context)
        );
}
